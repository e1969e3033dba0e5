import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MEASURES } from '../../shared/units/measures.ts';
import { fromEngine, toEngine } from '../../shared/units/toEngine.ts';
import { UNITS, type UnitName } from '../../shared/units/units.ts';
import { evenReal } from '../evenReal.ts';

function convert(value: number, from: UnitName, to: UnitName): number {
  return fromEngine(toEngine(value, from), to);
}

/** Last digits of a double only: the printed values are exact. */
const EXACT = { relative: 1e-12 };

describe('units', () => {
  test.each([
    { given: [1, 'floz', 'mL'], expected: 29.5735295625, source: 'HB44, A1' },
    { given: [1, 'cup', 'mL'], expected: 236.5882365, source: 'HB44, A2' },
    { given: [1, 'tsp', 'mL'], expected: 4.92892159375, source: 'HB44, A3' },
    { given: [1, 'gal', 'mL'], expected: 3785.411784, source: 'HB44, A4' },
    { given: [1, 'oz', 'g'], expected: 28.349523125, source: 'HB44, A5' },
    { given: [1, 'lb', 'g'], expected: 453.59237, source: 'HB44, A6' },
    { given: [1, 'in', 'mm'], expected: 25.4, source: 'HB44, A7' },
    { given: [1, 'in3', 'mL'], expected: 16.387064, source: 'HB44, A7' },
    { given: [-40, 'degF', 'degC'], expected: -40, source: 'SP811, A9' },
    { given: [98.6, 'degF', 'degC'], expected: 37, source: 'SP811, A9' },
    { given: [212, 'degF', 'degC'], expected: 100, source: 'SP811, A9' },
    { given: [177, 'degC', 'degF'], expected: 350.6, source: 'UCUM, A10' },
    { given: [37, 'degC', 'kelvin'], expected: 310.15, source: 'UCUM, A10' },
    { given: [1, 'BtuIT', 'J'], expected: 1055.05585262, source: 'SP811, A11' },
    { given: [1, 'metricDrop', 'mL'], expected: 0.05, source: 'GNUUNITS, A13' },
    { given: [10, 'differenceC', 'differenceF'], expected: 18, source: 'SP811, A16' },
    { given: [1, 'floz', 'in3'], expected: 1.8046875, source: 'HB44, A17' },
    { given: [1, 'gal', 'in3'], expected: 231, source: 'HB44, A17' },
    { given: [160, 'degC', 'degF'], expected: 320, source: 'definition, A18' },
    { given: [190, 'degC', 'degF'], expected: 374, source: 'definition, A18' },
  ] as const)('$given is $expected', ({ given: [value, from, to], expected }) => {
    expect(convert(value, from, to)).toBeNear(expected, EXACT);
  });

  test.each([
    {
      given: [350, 'degF', 'degC'],
      expected: 176.6667,
      within: 5e-5,
      source: 'UCUM, A8, printed to 4 places',
    },
    {
      given: [1, 'kWh', 'BtuIT'],
      expected: 3412.1416,
      within: 5e-5,
      source: 'SP811, A12, printed to 4 places',
    },
    {
      given: [1, 'floz', 'metricDrop'],
      expected: 591.47,
      within: 5e-3,
      source: 'GNUUNITS, A19, printed to 2 places',
    },
    {
      given: [1, 'tsp', 'metricDrop'],
      expected: 98.58,
      within: 5e-3,
      source: 'GNUUNITS, A19, printed to 2 places',
    },
    {
      given: [1, 'psi', 'Pa'],
      expected: 6894.757293,
      within: 1e-6,
      source: 'SP811, A20, printed to 6 places',
    },
    {
      given: [1, 'lbPerIn3', 'kgPerM3'],
      expected: 27679.90471,
      within: 1e-5,
      source: 'SP811, A20, printed to 5 places',
    },
  ] as const)(
    '$given is $expected as far as printed',
    ({ given: [value, from, to], expected, within }) => {
      expect(convert(value, from, to)).toBeNear(expected, { absolute: within });
    },
  );

  test('896 J/(kg K) is the 0.214 Btu/(lb °F) that the 6061 data sheet prints beside it', () => {
    expect(896 / ((UNITS.BtuIT.factor / UNITS.lb.factor) * 1.8)).toBeNear(0.214, {
      absolute: 5e-4,
    });
  });

  test.each([
    { given: [16, 'oz', 1, 'lb'] },
    { given: [8, 'floz', 1, 'cup'] },
    { given: [16, 'cup', 1, 'gal'] },
    { given: [6, 'tsp', 1, 'floz'] },
    { given: [12, 'in', 1, 'ft'] },
    { given: [60, 's', 1, 'min'] },
    { given: [60, 'min', 1, 'h'] },
    { given: [1000, 'uL', 1, 'mL'] },
    { given: [1000, 'g', 1, 'kg'] },
    { given: [100, 'percent', 1, 'fraction'] },
  ] as const)('$given agree', ({ given: [many, small, few, large] }) => {
    expect(toEngine(many, small)).toBeNear(toEngine(few, large), EXACT);
  });

  test('nutrition-label measures stay apart from the customary ones', () => {
    expect(convert(1, 'tsp', 'mL')).not.toBeNear(5, { absolute: 0.05 });
    expect(convert(1, 'cup', 'mL')).not.toBeNear(240, { absolute: 1 });
  });

  const ucum = UcumLhcUtils.getInstance();
  const codes: Readonly<Partial<Record<UnitName, string>>> = {
    in: '[in_i]',
    ft: '[ft_i]',
    mm: 'mm',
    mL: 'mL',
    uL: 'uL',
    floz: '[foz_us]',
    cup: '[cup_us]',
    gal: '[gal_us]',
    tsp: '[tsp_us]',
    in3: '[cin_i]',
    g: 'g',
    oz: '[oz_av]',
    lb: '[lb_av]',
    min: 'min',
    h: 'h',
    gPerML: 'g/mL',
    BtuIT: '[Btu_IT]',
    psi: '[psi]',
    metricDrop: '[drp]',
  };
  const bases: Readonly<Record<string, string>> = {
    length: 'm',
    volume: 'm3',
    mass: 'kg',
    time: 's',
    density: 'kg/m3',
    energy: 'J',
    pressure: 'Pa',
  };
  test.each(Object.entries(codes))('%s has the size that UCUM gives %s', (name, code) => {
    const unit = UNITS[name as UnitName]; // keys of the table above
    const result = ucum.convertUnitTo(code, 1, bases[unit.quantity] ?? '');
    expect(unit.factor).toBeNear(Number(result.toVal), { relative: 1e-9 });
  });

  test('fromEngine undoes toEngine', () => {
    const names = Object.keys(UNITS) as UnitName[]; // keys of the table
    fc.assert(
      fc.property(fc.constantFrom(...names), evenReal(-1e6, 1e6), (unit, value) => {
        expect(convert(value, unit, unit)).toBeNear(value, {
          absolute: 1e-9 * Math.max(1, Math.abs(value)),
        });
      }),
    );
  });

  test('both units of a measure are of one quantity', () => {
    for (const { US, metric } of Object.values(MEASURES))
      expect(UNITS[US].quantity).toBe(UNITS[metric].quantity);
  });
});
