import type { EarliestPour, LatestPour } from '../bondWindow.ts';
import { firstBelow } from './firstBelow.ts';
import type { LayerReading } from './layerReading.ts';
import type { CompletePour, CompleteStack } from './layerStack.ts';

/** How long a layer can still move. */
type LayerOpenTime =
  | { readonly kind: 'seconds'; readonly seconds: number }
  | { readonly kind: 'stays open'; readonly endMean: number }
  | { readonly kind: 'sets at once' };

/** When the next layer may land, counted from this layer's own pour, as if nothing were poured meanwhile. */
export interface SolvedWindow {
  readonly open: LayerOpenTime;
  readonly earliest: EarliestPour;
  readonly latest: LatestPour;
  /** Surface that the next pour must meet [°C] */
  readonly surfaceNeeded: number;
}

/** The three temperatures a layer falls to. */
export interface Thresholds {
  readonly set: number;
  readonly firm: number;
  readonly needed: number;
}

/**
 * What the layer must fall to. The surface needed puts the contact at the bond temperature:
 * T_needed = T_bond - (T_pour - T_bond) e_next / e_layer, 2 T_bond - T_pour for one plastic.
 */
export function thresholds(
  layer: CompletePour,
  next: CompletePour | undefined,
  stack: CompleteStack,
): Thresholds {
  const { bondTemperature: bond } = stack;
  const pour = next?.temperature ?? stack.followingPour;
  const ratio = next === undefined ? 1 : Math.sqrt(heldHeat(next) / heldHeat(layer));
  const needed = bond - (pour - bond) * ratio;
  return { set: layer.setTemperature, firm: stack.firmTemperature, needed };
}

/** Square of the effusivity. */
function heldHeat({ conductivity, density, specificHeat }: CompletePour): number {
  return conductivity * density * specificHeat;
}

/** Whether later readings can add nothing to the window of a layer that only cools. */
export function isPast(
  { mean, surface }: LayerReading,
  { set, firm, needed }: Thresholds,
): boolean {
  return mean < set && surface < firm && surface < needed;
}

/**
 * Window of a layer from its readings: the first moment each threshold is passed.
 * A mold that climbs may warm a surface again; only the first fall counts, so the window errs early.
 * @param readings - from its pour on, uncovered, in order of time
 */
export function layerWindow(readings: readonly LayerReading[], wanted: Thresholds): SolvedWindow {
  const mean = ({ mean }: LayerReading) => mean;
  const surface = ({ surface }: LayerReading) => surface;
  const open = firstBelow(readings, mean, wanted.set);
  const firm = firstBelow(readings, surface, wanted.firm);
  const late = firstBelow(readings, surface, wanted.needed);
  const endMean = readings[readings.length - 1]?.mean ?? Number.NaN;
  return {
    open: openOf(),
    earliest: earliestOf(),
    latest: latestOf(),
    surfaceNeeded: wanted.needed,
  };

  function openOf(): LayerOpenTime {
    if (open === undefined) return { kind: 'stays open', endMean };
    return open === 0 ? { kind: 'sets at once' } : { kind: 'seconds', seconds: open };
  }
  function earliestOf(): EarliestPour {
    if (firm === undefined) return { kind: 'never firm' };
    return firm === 0 ? { kind: 'at once' } : { kind: 'seconds', seconds: firm };
  }
  function latestOf(): LatestPour {
    if (late === undefined) return { kind: 'any time' };
    return late === 0 ? { kind: 'too late from the start' } : { kind: 'seconds', seconds: late };
  }
}
