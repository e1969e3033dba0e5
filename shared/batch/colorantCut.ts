import { requireNumber } from '../errors/requireNumber.ts';

export interface CutWanted {
  /** One part of colorant in this many parts in all, by volume, > 1 */
  readonly parts: number;
  /** Of the cut colorant to make [m3], > 0 */
  readonly volume: number;
  /** [kg/m3], > 0 */
  readonly colorantDensity: number;
  /** Of the clear base or softener that thins it [kg/m3], > 0 */
  readonly thinnerDensity: number;
}

export interface ColorantCut {
  readonly colorantVolume: number;
  readonly thinnerVolume: number;
  readonly colorantMass: number;
  readonly thinnerMass: number;
  /** Of the cut [kg/m3]; drops of it weigh this times the drop volume */
  readonly density: number;
}

/**
 * What to put together for a weaker colorant, so that a fraction of a drop becomes several drops.
 *
 * By volume, since drops are counted: colorant = volume / parts, the rest is thinner; volumes add. The thinner brings
 * softener or base into the cup: a few drops do not matter, a few milliliters soften the piece.
 *
 * @throws InputError on a figure out of range
 */
export function colorantCut(wanted: CutWanted): ColorantCut {
  const { parts, volume, colorantDensity, thinnerDensity } = wanted;
  requireNumber(parts, 'parts', { greaterThan: 1 });
  requireNumber(volume, 'cut colorant', { unit: 'm3', greaterThan: 0 });
  requireNumber(colorantDensity, 'colorant density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(thinnerDensity, 'thinner density', { unit: 'kgPerM3', greaterThan: 0 });
  const colorantVolume = volume / parts;
  const thinnerVolume = volume - colorantVolume;
  const colorantMass = colorantVolume * colorantDensity;
  const thinnerMass = thinnerVolume * thinnerDensity;
  return {
    colorantVolume,
    thinnerVolume,
    colorantMass,
    thinnerMass,
    density: (colorantMass + thinnerMass) / volume,
  };
}
