import { bandText } from '../../words/bandText.ts';
import { countText, durationText, stopwatchText } from '../../words/quantityText.ts';
import type { LayerTimeline, TimelineLayer } from './layerTimeline.ts';

export const LAYER_TIMELINE_TITLE = 'One round, layer by layer';

/** The layer timeline in words, from the same numbers. */
export function layerTimelineText({ layers }: LayerTimeline): string {
  return layers.map(layerWords).join(' ');
}

function layerWords(layer: TimelineLayer): string {
  const { name, run } = layer;
  const stops = run.stops === 0 ? '' : `, ${countText(run.stops, 'stop')} to heat the cup`;
  const poured = `${name}: poured from ${stopwatchText(run.firstAt)} to ${stopwatchText(run.lastAt)} on the stopwatch${stops}`;
  return `${[poured, windowWords(layer), openWords(layer)].filter((one) => one !== '').join('; ')}.`;
}

function windowWords({ window, bands }: TimelineLayer): string {
  if (window === undefined) return '';
  if (window.kind === 'none') return `no time to follow, ${window.because}`;
  const early = bandText(bands?.earliest, down, up);
  const start = `may follow the layer below after ${durationText(window.earliest, 'up')}${early}`;
  if (window.kind === 'from') return `${start}, at any later time${laterWords(bands?.latest?.low)}`;
  return `${start} and until ${durationText(window.latest, 'down')}${bandText(bands?.latest, down, up)}`;
}

function laterWords(low: number | undefined): string {
  return low === undefined ? '' : ` (at worst until ${durationText(low, 'down')})`;
}

function openWords({ openTime, bands }: TimelineLayer): string {
  if (openTime.kind === 'stays open') return 'stays open';
  return `open for ${durationText(openTime.seconds, 'down')}${bandText(bands?.open, down, up)}`;
}

function down(seconds: number): string {
  return durationText(seconds, 'down');
}

function up(seconds: number): string {
  return durationText(seconds, 'up');
}
