import { sayCount, sayDuration, sayStopwatch } from '../../words/say.ts';
import { sayBand } from '../../words/sayBand.ts';
import type { LayerTimeline, TimelineLayer } from './layerTimeline.ts';

/** The layer timeline in words, from the same numbers. */
export function layerTimelineWords({ layers }: LayerTimeline): string {
  return layers.map(layerWords).join(' ');
}

function layerWords(layer: TimelineLayer): string {
  const { name, run } = layer;
  const stops = run.stops === 0 ? '' : `, ${sayCount(run.stops, 'stop')} to heat the cup`;
  const poured = `${name}: poured from ${sayStopwatch(run.firstAt)} to ${sayStopwatch(run.lastAt)} on the stopwatch${stops}`;
  return `${[poured, windowWords(layer), openWords(layer)].filter((one) => one !== '').join('; ')}.`;
}

function windowWords({ window, bands }: TimelineLayer): string {
  if (window === undefined) return '';
  if (window.kind === 'none') return `no time to follow, ${window.because}`;
  const early = sayBand(bands?.earliest, down, up);
  const start = `may follow the layer below after ${sayDuration(window.earliest, 'up')}${early}`;
  if (window.kind === 'from') return `${start}, at any later time${laterWords(bands?.latest?.low)}`;
  return `${start} and until ${sayDuration(window.latest, 'down')}${sayBand(bands?.latest, down, up)}`;
}

function laterWords(low: number | undefined): string {
  return low === undefined ? '' : ` (at worst until ${sayDuration(low, 'down')})`;
}

function openWords({ openTime, bands }: TimelineLayer): string {
  if (openTime.kind === 'stays open') return 'stays open';
  return `open for ${sayDuration(openTime.seconds, 'down')}${sayBand(bands?.open, down, up)}`;
}

function down(seconds: number): string {
  return sayDuration(seconds, 'down');
}

function up(seconds: number): string {
  return sayDuration(seconds, 'up');
}
