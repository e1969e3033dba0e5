import { InputError } from '../errors/InputError.ts';
import { requireNumber } from '../errors/requireNumber.ts';

export interface LayerWanted {
  /** Pieces to pour, whole, >= 1 */
  readonly pieces: number;
  /** Of one cavity [m3], > 0 */
  readonly cavityVolume: number;
  /** Of the cavity, above 0 to 1 */
  readonly share: number;
  /** Cold [kg/m3], > 0 */
  readonly density: number;
  /** Extra for topping off and drips, as a share of what the pieces hold, >= 0 */
  readonly overpour: number;
  /** Left on the wall of each cup [kg], >= 0 */
  readonly cupLoss: number;
  /** Drizzled out of the layer to judge its color [kg], >= 0 */
  readonly colorCheck: number;
  /** Most hot plastisol in one cup [m3], > 0 */
  readonly cupFill: number;
  /** Volumetric [1/K], >= 0 */
  readonly expansion: number;
  /** From weighing to pouring [K], >= 0 */
  readonly temperatureRise: number;
}

export interface LayerBatch {
  readonly cups: number;
  /** In each cup, all equal: mass [kg], cold volume [m3], hot volume [m3] */
  readonly cupMass: number;
  readonly cupVolume: number;
  readonly cupHotVolume: number;
  readonly totalMass: number;
  readonly totalVolume: number;
}

/**
 * Plastisol of one layer in equal cups.
 * mass = pieces x volume x share x density x (1 + overpour) + color check + cup loss x cups;
 * cups = the fewest whose hot volume fits, so that the loss in the last cup is counted too:
 * ceil(hot volume without loss / (cup fill - hot volume of one loss)).
 * @throws InputError on a figure out of range, or a cup that its own loss fills
 */
export function layerBatch(wanted: LayerWanted): LayerBatch {
  requireLayer(wanted);
  const { pieces, cavityVolume, share, density, overpour, cupLoss, colorCheck, cupFill } = wanted;
  const swelling = 1 + wanted.expansion * wanted.temperatureRise;
  const needed = pieces * cavityVolume * share * density * (1 + overpour) + colorCheck;
  const usable = cupFill - (cupLoss / density) * swelling;
  if (usable <= 0)
    throw new InputError({
      field: 'cup fill',
      rule: { kind: 'greater than', limit: cupFill - usable, what: 'what stays in a cup' },
      value: cupFill,
      unit: 'm3',
    });
  const cups = Math.max(1, Math.ceil(((needed / density) * swelling) / usable - 1e-9));
  const cupMass = needed / cups + cupLoss;
  return {
    cups,
    cupMass,
    cupVolume: cupMass / density,
    cupHotVolume: (cupMass / density) * swelling,
    totalMass: cupMass * cups,
    totalVolume: (cupMass / density) * cups,
  };
}

function requireLayer(wanted: LayerWanted): void {
  requireNumber(wanted.pieces, 'pieces to pour', { atLeast: 1, whole: true });
  requireNumber(wanted.cavityVolume, 'cavity volume', { unit: 'm3', greaterThan: 0 });
  requireNumber(wanted.share, 'share', { greaterThan: 0, atMost: 1 });
  requireNumber(wanted.density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(wanted.overpour, 'overpour', { atLeast: 0 });
  requireNumber(wanted.cupLoss, 'left in each cup', { unit: 'kg', atLeast: 0 });
  requireNumber(wanted.colorCheck, 'color check', { unit: 'kg', atLeast: 0 });
  requireNumber(wanted.cupFill, 'cup fill', { unit: 'm3', greaterThan: 0 });
  requireNumber(wanted.expansion, 'expansion', { atLeast: 0 });
  requireNumber(wanted.temperatureRise, 'temperature rise', { unit: 'differenceC', atLeast: 0 });
}
