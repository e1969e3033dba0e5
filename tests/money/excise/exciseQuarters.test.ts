import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EXCISE_STATUSES } from '../../../shared/book/settings/exciseChoices.ts';
import {
  type ExciseEntry,
  type ExciseSums,
  exciseQuarters,
  exciseYears,
} from '../../../shared/money/excise/exciseQuarters.ts';
import { errorText } from '../../heat/errorText.ts';

function sale(
  day: string,
  price: number,
  tax: number,
  more: Partial<ExciseEntry> = {},
): ExciseEntry {
  const excise = { base: price - tax, tax, rate: 0.1, reason: 'taxable' } as const;
  return Object.freeze({ day, price, excise, ...more });
}

const untaxed = (reason: ExciseEntry['excise']['reason']) => ({
  excise: { base: 0, tax: 0, rate: 0.1, reason },
});

describe('exciseQuarters', () => {
  test('adds up the tax of each sale, by quarter, with what is not taxed and why', () => {
    const quarters = exciseQuarters([
      sale('2026-04-01', 11_000, 1000),
      sale('2026-01-31', 11_000, 1000),
      sale('2026-03-31', 10_000, 909),
      sale('2026-02-10', 5000, 0, untaxed('export')),
      sale('2026-02-11', 700, 0, untaxed('exempt')),
      sale('2026-02-12', 40, 0, untaxed('further manufacture')),
      sale('2026-02-13', 3, 0, untaxed('off')),
    ]);
    expect(quarters).toEqual([
      {
        year: 2026,
        quarter: 1,
        due: '2026-04-30',
        sales: 6,
        gross: 26_743,
        taxed: 21_000,
        untaxed: { off: 3, exempt: 700, export: 5000, 'further manufacture': 40 },
        base: 19_091,
        tax: 1909,
        adjustments: { count: 0, price: 0, base: 0, tax: 0 },
        rates: [0.1],
      },
      {
        year: 2026,
        quarter: 2,
        due: '2026-07-31',
        sales: 1,
        gross: 11_000,
        taxed: 11_000,
        untaxed: { off: 0, exempt: 0, export: 0, 'further manufacture': 0 },
        base: 10_000,
        tax: 1000,
        adjustments: { count: 0, price: 0, base: 0, tax: 0 },
        rates: [0.1],
      },
    ]);
  });

  test('a correction in the quarter of its sale changes it; a later one stands apart', () => {
    const [first, second] = exciseQuarters([
      sale('2026-03-30', 11_000, 1000),
      sale('2026-03-31', -1100, -100, { corrects: '2026-03-30' }),
      sale('2026-05-02', -2200, -200, { corrects: '2026-03-30' }),
    ]);
    expect(first).toMatchObject({ sales: 1, gross: 9900, tax: 900, adjustments: { count: 0 } });
    expect(second).toMatchObject({
      sales: 0,
      gross: 0,
      tax: 0,
      rates: [],
      adjustments: { count: 1, price: -2200, base: -2000, tax: -200 },
    });
  });

  // from memory, as FORM720 says
  test.each([
    ['2026-01-01', 1, '2026-04-30'],
    ['2026-06-30', 2, '2026-07-31'],
    ['2026-07-01', 3, '2026-10-31'],
    ['2026-12-31', 4, '2027-01-31'],
  ])('a sale on %s is of quarter %d, due %s', (day, quarter, due) => {
    expect(exciseQuarters([sale(day, 1, 0)])).toMatchObject([{ year: 2026, quarter, due }]);
  });

  test('names every rate of a quarter in which it changed', () => {
    const excise = { base: 100, tax: 3, rate: 0.03, reason: 'taxable' } as const;
    const entries = [sale('2026-01-05', 110, 10), sale('2026-01-06', 103, 3, { excise })];
    expect(exciseQuarters(entries)).toMatchObject([{ rates: [0.03, 0.1] }]);
  });

  test.each(['soon', '2026-13-01', '2026-00-10', '2026-01-32', '', '2026-1-1', '02/03/2026'])(
    'refuses %j as a day',
    (day) => {
      expect(errorText(() => exciseQuarters([sale(day, 1, 0)]))).toBe(
        `day of the sale must be a date such as 2026-03-31, got ${day === '' ? 'nothing' : `"${day}"`}`,
      );
    },
  );

  test('no sale is no quarter', () => {
    expect(exciseQuarters([])).toEqual([]);
    expect(exciseYears([])).toEqual([]);
  });
});

const anyDay = fc
  .record({
    year: fc.integer({ min: 2023, max: 2027 }),
    month: fc.integer({ min: 1, max: 12 }),
    date: fc.integer({ min: 1, max: 28 }),
  })
  .map(({ year, month, date }) =>
    [year, String(month).padStart(2, '0'), String(date).padStart(2, '0')].join('-'),
  );
const anyMinor = fc.integer({ min: -1e6, max: 1e6 });
const anyEntry: fc.Arbitrary<ExciseEntry> = fc
  .record({
    day: anyDay,
    corrects: fc.option(anyDay),
    price: anyMinor,
    base: anyMinor,
    tax: anyMinor,
    rate: fc.constantFrom(0.1, 0.03),
    reason: fc.constantFrom(...EXCISE_STATUSES, 'off' as const),
  })
  .map(({ day, corrects, price, base, tax, rate, reason }) => {
    const taxed = reason === 'taxable';
    const excise = { base: taxed ? base : 0, tax: taxed ? tax : 0, rate, reason };
    return Object.freeze({ day, price, excise, ...(corrects === null ? {} : { corrects }) });
  });

const total = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0);

/** Every amount of a sum, under its name. */
function amounts({ untaxed: reasons, adjustments, ...sums }: ExciseSums): Record<string, number> {
  const { sales, gross, taxed, base, tax } = sums;
  return { sales, gross, taxed, base, tax, ...reasons, ...renamed(adjustments) };
}

function renamed(adjustments: ExciseSums['adjustments']): Record<string, number> {
  return Object.fromEntries(
    Object.entries(adjustments).map(([key, value]) => [`adjusted ${key}`, value]),
  );
}

describe('any books', () => {
  test('quarters sum to their year, years to all entries; taxed and untaxed sum to gross', () => {
    fc.assert(
      fc.property(fc.array(anyEntry, { maxLength: 60 }), (entries) => {
        const quarters = exciseQuarters(Object.freeze(entries));
        const years = exciseYears(quarters);
        for (const sums of [...quarters, ...years])
          expect(sums.taxed + total(Object.values(sums.untaxed))).toBe(sums.gross);
        for (const year of years) {
          const own = quarters.filter((quarter) => quarter.year === year.year).map(amounts);
          for (const [name, amount] of Object.entries(amounts(year)))
            expect(total(own.map((quarter) => quarter[name] ?? Number.NaN))).toBe(amount);
        }
        expect(total(years.map(({ tax, adjustments }) => tax + adjustments.tax))).toBe(
          total(entries.map(({ excise }) => excise.tax)),
        );
        expect(total(years.map(({ gross, adjustments }) => gross + adjustments.price))).toBe(
          total(entries.map(({ price }) => price)),
        );
        expect(total(years.map(({ sales }) => sales))).toBe(
          entries.filter(({ corrects }) => corrects === undefined).length,
        );
      }),
    );
  });

  test('the order of the entries does not matter, and quarters come in order', () => {
    fc.assert(
      fc.property(fc.array(anyEntry, { maxLength: 30 }), (entries) => {
        const quarters = exciseQuarters(entries);
        expect(exciseQuarters([...entries].reverse())).toEqual(quarters);
        const places = quarters.map(({ year, quarter }) => year * 4 + quarter);
        expect(places).toEqual([...new Set(places)].sort((one, other) => one - other));
      }),
    );
  });
});
