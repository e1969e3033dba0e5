import { requireNumber } from '../errors/requireNumber.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { type LayerCooling, layerCooling, timeToFall } from './layerCooling.ts';
import type { LayerInMold } from './layerInMold.ts';

/** When the surface is firm enough to carry the next layer without mixing. */
export type EarliestPour =
  | { readonly kind: 'seconds'; readonly seconds: number }
  | { readonly kind: 'at once' }
  | { readonly kind: 'never firm' };

/** Until when the next layer still bonds. */
export type LatestPour =
  | { readonly kind: 'seconds'; readonly seconds: number }
  | { readonly kind: 'any time' }
  | { readonly kind: 'too late from the start' };

export interface BondWindow {
  readonly earliest: EarliestPour;
  readonly latest: LatestPour;
  /** Whether there is a moment that is both firm and in time. */
  readonly verdict: 'open' | 'closes before firm' | 'never firm' | 'too late from the start';
  /** The surface must read at least this when the next pour lands [°C] */
  readonly surfaceNeeded: number;
  /** Where the surface settles while the mold stays at its temperature [°C] */
  readonly settledSurface: number;
}

export interface NextPour {
  /** Of the next layer as it lands: the cup's, less the loss while pouring [°C] */
  readonly pourTemperature: number;
  /** Contact temperature above which layers bond [°C] */
  readonly bondTemperature?: number;
  /** Surface below which the layer no longer mixes with the next [°C] */
  readonly firmTemperature?: number;
}

/**
 * Surface temperature that a layer must still have for the next one to bond: 2 T_bond - T_pour, from the average of two
 * surfaces of one plastic.
 * @returns [°C]
 */
export function surfaceNeeded({
  pourTemperature,
  bondTemperature = DEFAULTS.bondTemperature.value,
}: NextPour): number {
  requireNumber(pourTemperature, 'next pour temperature', { unit: 'degC' });
  requireNumber(bondTemperature, 'bond temperature', { unit: 'degC' });
  return 2 * bondTemperature - pourTemperature;
}

/**
 * Earliest and latest moment for the next layer, counted from the pour of the layer below.
 *
 * Earliest: the surface is down to the firm temperature. Latest: the surface is down to 2 T_bond - T_pour.
 * The surface follows the exact series of `layerCooling`: mold and air constant, a single layer in the mold; later layers
 * of a thick stack sit on plastic and are better described by their full stack as one thickness.
 * A clean interface is taken for granted: oil, release agent, dust and moisture spoil a bond at any temperature.
 *
 * @throws InputError as `layerCooling`
 */
export function bondWindow(layer: LayerInMold, next: NextPour): BondWindow {
  const { firmTemperature = DEFAULTS.firmTemperature.value } = next;
  requireNumber(firmTemperature, 'firm temperature', { unit: 'degC' });
  const needed = surfaceNeeded(next);
  const cooling = layerCooling(layer);
  const earliest = earliestPour(cooling, firmTemperature);
  const latest = latestPour(cooling, needed);
  return {
    earliest,
    latest,
    verdict: windowVerdict(earliest, latest),
    surfaceNeeded: needed,
    settledSurface: cooling.settled.surface,
  };
}

function earliestPour(cooling: LayerCooling, firmTemperature: number): EarliestPour {
  const fall = timeToFall(cooling, 'surface', firmTemperature);
  if (fall.kind === 'never') return { kind: 'never firm' };
  return fall.kind === 'from the start' ? { kind: 'at once' } : fall;
}

function latestPour(cooling: LayerCooling, needed: number): LatestPour {
  const fall = timeToFall(cooling, 'surface', needed);
  if (fall.kind === 'never') return { kind: 'any time' };
  return fall.kind === 'from the start' ? { kind: 'too late from the start' } : fall;
}

/** Whether an earliest and a latest moment leave any time between them. */
export function windowVerdict(earliest: EarliestPour, latest: LatestPour): BondWindow['verdict'] {
  if (latest.kind === 'too late from the start') return latest.kind;
  if (earliest.kind === 'never firm') return earliest.kind;
  if (earliest.kind === 'at once' || latest.kind === 'any time') return 'open';
  return earliest.seconds < latest.seconds ? 'open' : 'closes before firm';
}
