import { inBrackets } from '../../words/bandText.ts';
import { countText, durationText, stopwatchText } from '../../words/quantityText.ts';
import { timeBandText } from '../../words/timeBandText.ts';
import type { LayerTimeline, TimelineLayer } from './layerTimeline.ts';

export const LAYER_TIMELINE_TITLE = 'One round, layer by layer';

/** The layer timeline in words, from the same numbers. */
export function layerTimelineText({ layers }: LayerTimeline): string {
  return layers.map(layerText).join(' ');
}

function layerText(layer: TimelineLayer): string {
  const { name, run } = layer;
  const stops = run.stops === 0 ? '' : `, ${countText(run.stops, 'stop')} to heat the cup`;
  const poured = `${name}: poured from ${stopwatchText(run.firstAt)} to ${stopwatchText(run.lastAt)} on the stopwatch${stops}`;
  return `${[poured, followText(layer), openText(layer)].filter((one) => one !== '').join('; ')}.`;
}

function followText({ window, bands }: TimelineLayer): string {
  if (window === undefined) return '';
  if (window.kind === 'none') return `no time to follow, ${window.because}`;
  const early = inBrackets(timeBandText(bands?.earliest));
  const start = `may follow the layer below after ${durationText(window.earliest, 'up')}${early}`;
  if (window.kind === 'from') return `${start}, at any later time${laterText(bands?.latest?.low)}`;
  return `${start} and until ${durationText(window.latest, 'down')}${inBrackets(timeBandText(bands?.latest))}`;
}

function laterText(low: number | undefined): string {
  return low === undefined ? '' : ` (at worst until ${durationText(low, 'down')})`;
}

function openText({ openTime, bands }: TimelineLayer): string {
  if (openTime.kind === 'stays open') return 'stays open';
  return `open for ${durationText(openTime.seconds, 'down')}${inBrackets(timeBandText(bands?.open))}`;
}
