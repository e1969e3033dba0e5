import { requireNumber } from '../errors/requireNumber.ts';
import { toEngine } from '../units/toEngine.ts';

export type DoseUnit = 'drop' | 'mL' | 'g' | 'tsp';

export interface Recipe {
  /** In its unit, > 0 */
  readonly amount: number;
  readonly unit: DoseUnit;
  /** Base that the amount is for, cold [m3], > 0 */
  readonly per: number;
  /** Of one drop of this material [m3], > 0 */
  readonly dropVolume: number;
  /** True density of the material [kg/m3], > 0 */
  readonly density: number;
  /** Mass of a level spoonful over its volume [kg/m3], > 0 */
  readonly spoonDensity: number;
}

export interface ScaledDose {
  readonly mass: number;
  /** In the recipe's own unit */
  readonly amount: number;
  /** As drops of this material, for liquids */
  readonly drops: number;
}

/**
 * A recipe's dose for a cup of another size, in proportion to the base. The colorant's own volume is not taken off the
 * base: at common loadings it is under 3 %.
 * @param cupVolume base in the cup, cold [m3], > 0
 * @throws InputError on a figure out of range
 */
export function scaledDose(recipe: Recipe, cupVolume: number): ScaledDose {
  requireNumber(recipe.amount, 'amount', { greaterThan: 0 });
  requireNumber(recipe.per, 'per base', { unit: 'm3', greaterThan: 0 });
  requireNumber(recipe.dropVolume, 'drop volume', { unit: 'm3', greaterThan: 0 });
  requireNumber(recipe.density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(recipe.spoonDensity, 'spoon density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(cupVolume, 'base in the cup', { unit: 'm3', greaterThan: 0 });
  const amount = (recipe.amount * cupVolume) / recipe.per;
  const mass = amount * unitMass(recipe);
  return { mass, amount, drops: mass / (recipe.dropVolume * recipe.density) };
}

/** Mass of one unit of the recipe [kg]. */
function unitMass({ unit, dropVolume, density, spoonDensity }: Recipe): number {
  switch (unit) {
    case 'drop':
      return dropVolume * density;
    case 'mL':
      return toEngine(1, 'mL') * density;
    case 'g':
      return toEngine(1, 'g');
    case 'tsp':
      return toEngine(1, 'tsp') * spoonDensity;
  }
}
