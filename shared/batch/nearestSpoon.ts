import { requireNumber } from '../errors/requireNumber.ts';
import { toEngine } from '../units/toEngine.ts';

/** Level measuring spoons, as parts of a teaspoon: 1/64, 1/32 … 1. */
const SPOON_PARTS = [64, 32, 16, 8, 4, 2, 1] as const;

/** Most scoops of one spoon before a larger one, or a scale, is the better tool. */
const MOST_SCOOPS = 3;

export interface Spoonful {
  readonly scoops: number;
  /** 64 for 1/64 teaspoon … 1 for a whole one */
  readonly part: number;
  /** What the scoops hold over what is wanted, less 1 */
  readonly error: number;
}

/**
 * The nearest level spoonful: one to three scoops of one spoon, 1/64 to 1 teaspoon. Level powder repeats to 15-25 % only
 * (from memory), so grams come first and the spoon second.
 * @param mass wanted [kg], > 0
 * @param spoonDensity mass of a level spoonful over its volume [kg/m3], > 0
 * @throws InputError on a figure out of range
 */
export function nearestSpoon(mass: number, spoonDensity: number): Spoonful {
  requireNumber(mass, 'mass', { unit: 'kg', greaterThan: 0 });
  requireNumber(spoonDensity, 'spoon density', { unit: 'kgPerM3', greaterThan: 0 });
  const teaspoons = mass / spoonDensity / toEngine(1, 'tsp');
  let best: Spoonful = { scoops: 1, part: 64, error: 1 / 64 / teaspoons - 1 };
  for (const part of SPOON_PARTS)
    for (let scoops = 1; scoops <= MOST_SCOOPS; scoops++) {
      const error = scoops / part / teaspoons - 1;
      const gain = Math.abs(best.error) - Math.abs(error);
      const isFewer = Math.abs(gain) < 1e-12 && scoops < best.scoops;
      if (gain > 1e-12 || isFewer) best = { scoops, part, error };
    }
  return best;
}
