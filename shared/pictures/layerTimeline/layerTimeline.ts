import type { LayerPlan, LayerRun, LayerWindow, OrderPlan } from '../../plan/planTypes.ts';
import type { Band, LayerBands } from '../../plan/uncertainty/heatDetail.ts';

/** One layer of a round [s]. */
export interface TimelineLayer {
  readonly name: string;
  readonly run: LayerRun;
  readonly openTime: LayerPlan['openTime'];
  readonly window?: LayerWindow;
  readonly bands?: LayerBands;
}

/** What the layer timeline shows: one round, from its first pour. */
export interface LayerTimeline {
  readonly kind: 'layer-timeline';
  readonly layers: readonly TimelineLayer[];
}

/** The round of a plan. */
export function layerTimelineOf({ layers, detail }: OrderPlan): LayerTimeline {
  return {
    kind: 'layer-timeline',
    layers: layers.map(({ order, layer, run, openTime, window }, index) => {
      const bands = detail?.layers[index];
      return {
        name: `${order} ${layer}`,
        run,
        openTime,
        ...(window === undefined ? {} : { window }),
        ...(bands === undefined ? {} : { bands }),
      };
    }),
  };
}

/** When a layer may follow in one cavity, from the pour of the layer below [s]; what is left out is open to the right. */
export interface Follow {
  readonly from: number;
  readonly to?: number;
  /** What stands in nine of ten cases; absent where nothing does */
  readonly sure?: { readonly from: number; readonly to?: number };
}

/**
 * The window of a layer with the ends of its bands around it; undefined where it has none.
 * The outer ends are the earliest and the latest that may be, the sure part is what all but the outermost cases share.
 */
export function followOf({ window, bands }: TimelineLayer): Follow | undefined {
  if (window === undefined || window.kind === 'none') return undefined;
  const latest = window.kind === 'between' ? window.latest : undefined;
  const from = Math.min(window.earliest, bands?.earliest?.low ?? window.earliest);
  const surelyFrom = highOf(bands?.earliest, window.earliest);
  const to = latest === undefined ? undefined : highOf(bands?.latest, latest);
  const surelyTo = lowest(latest, bands?.latest?.low);
  const outer = to === undefined ? { from } : { from, to: Math.max(to, latest ?? to) };
  if (surelyFrom === undefined) return outer;
  if (surelyTo === undefined) return { ...outer, sure: { from: surelyFrom } };
  return surelyTo > surelyFrom ? { ...outer, sure: { from: surelyFrom, to: surelyTo } } : outer;
}

/** The upper end: open where the band leaves it out, the figure itself where there is no band. */
function highOf(band: Band | undefined, figure: number): number | undefined {
  return band === undefined ? figure : band.high;
}

function lowest(...ends: readonly (number | undefined)[]): number | undefined {
  const given = ends.filter((end) => end !== undefined);
  return given.length === 0 ? undefined : Math.min(...given);
}
