import { type DoseUnit, scaledDose } from '../../batch/scaledDose.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';
import { doseText } from '../doseText.ts';
import { POSITIVE } from '../positive.ts';

export const POUR_DOSE = defineFunction({
  name: 'POUR_DOSE',
  family: 'batch',
  about: 'A recipe’s dose for a cup of another size: grams, drops, and how to measure it.',
  params: {
    amount: { kind: 'number', about: 'Recipe amount.', bounds: POSITIVE },
    unit: { kind: 'choice', about: 'Unit of the amount.', choices: ['drop', 'mL', 'g', 'tsp'] },
    per: {
      kind: 'number',
      field: 'per base',
      measure: 'liquidVolume',
      about: 'Base that the amount is for.',
      bounds: POSITIVE,
    },
    cup: {
      kind: 'number',
      field: 'base in the cup',
      measure: 'liquidVolume',
      about: 'Base in this cup, cold.',
      bounds: POSITIVE,
    },
    dropVolume: {
      kind: 'number',
      measure: 'dropVolume',
      about: 'One drop from this bottle: weigh 50.',
      bounds: { greaterThan: 0, atMost: 2e-7 },
      default: DEFAULTS.dropVolume.value,
    },
    density: {
      kind: 'number',
      measure: 'density',
      about: 'Density of the colorant.',
      bounds: POSITIVE,
      default: DEFAULTS.colorantDensity.value,
    },
    spoonDensity: {
      kind: 'number',
      measure: 'density',
      about: 'Weight of a level spoonful over its volume.',
      bounds: POSITIVE,
      default: DEFAULTS.spoonDensity.value,
    },
    tolerance: {
      kind: 'number',
      measure: 'fraction',
      about: 'Largest error of a rounded dose.',
      bounds: { greaterThan: 0, atMost: 0.5 },
      default: DEFAULTS.doseTolerance.value,
    },
  },
  returns: [
    { name: 'grams', about: 'Weight of the dose', kind: 'number', measure: 'doseMass' },
    { name: 'amount', about: 'Amount in the recipe’s unit, unrounded', kind: 'number' },
    { name: 'measure', about: 'How to measure it', kind: 'text' },
  ],
  examples: [
    {
      args: [4, 'drop', 8, 4, 40, 1.1],
      result: [0.088, 2, '2 drops'],
      within: 1e-9,
      source: 'half of the reference amount takes half the drops, by hand',
    },
    {
      args: [1, 'drop', 8, 2, 40, 1.1],
      result: [
        0.011,
        0.25,
        'not whole drops: make 4 cups’ worth with 1 drop, or cut 1 part in 32 and use 8 drops, or weigh',
      ],
      within: 1e-9,
      source: 'by hand',
    },
  ],
  notes:
    'In proportion to the base. Drops are rounded within the tolerance; past it the smallest batch with whole drops, a cut of at least 8 drops, and the scale are offered in this order. Sizes of drops and spoons differ by 30 % from bottle to bottle: measure yours.',
  compute: ({ amount, unit, per, cup, dropVolume, density, spoonDensity, tolerance }) => {
    const recipeUnit: DoseUnit = unit;
    const dose = scaledDose(
      { amount, unit: recipeUnit, per, dropVolume, density, spoonDensity },
      cup,
    );
    return [dose.mass, dose.amount, doseText(recipeUnit, dose, spoonDensity, tolerance)];
  },
});
