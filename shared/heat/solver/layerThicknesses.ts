import { requireNumber } from '../../errors/requireNumber.ts';

/** A cavity filled up to the top of one layer. */
export interface CavityFill {
  /** All plastic in the cavity so far [m3], > 0 */
  readonly volume: number;
  /** Metal it touches, free surface not counted [m2], > 0 */
  readonly wettedArea: number;
}

/**
 * Thicknesses of the slab whose layers cool like those of a cavity: M = volume / wetted metal area of each fill, each layer
 * the rise of M over the fill below.
 *
 * @param fills - one per layer, bottom first, each with all layers below it
 * @returns one per layer [m]
 * @throws InputError on a figure out of range, or a fill that adds metal faster than plastic
 */
export function layerThicknesses(fills: readonly CavityFill[]): readonly number[] {
  const depths = fills.map(({ volume, wettedArea }) => {
    requireNumber(volume, 'volume filled', { unit: 'm3', greaterThan: 0 });
    requireNumber(wettedArea, 'wetted area', { greaterThan: 0 });
    return volume / wettedArea;
  });
  return depths.map((depth, index) => {
    const below = depths[index - 1] ?? 0;
    requireNumber(depth, 'volume over wetted area', { unit: 'm', greaterThan: below });
    return depth - below;
  });
}
