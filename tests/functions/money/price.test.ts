import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { POUR_BREAKS } from '../../../shared/functions/money/POUR_BREAKS.ts';
import { POUR_EXCISE } from '../../../shared/functions/money/POUR_EXCISE.ts';
import { POUR_MARGIN } from '../../../shared/functions/money/POUR_MARGIN.ts';
import { POUR_PRICE } from '../../../shared/functions/money/POUR_PRICE.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';
import { evenReal } from '../../evenReal.ts';

describe('POUR_PRICE', () => {
  test.each([
    [
      [0.61, 0.45],
      [1.15, 0.46957, 0.88525],
    ],
    [
      [0.61, '45%', '', 0],
      [1.11, 0.45045, 0.81967],
    ],
    [
      [61, 0.45, 'margin', 0.05, 0, 'JPY'],
      [111, 0.45045, 0.81967],
    ],
  ] as const)('%j answers %j', (args, expected) => {
    const [row = []] = runFunction(POUR_PRICE, args) as number[][]; // three results: a row
    expected.forEach((value, index) => {
      expect(row[index]).toBeNear(value, { absolute: 5e-6 }); // by hand to five places
    });
  });

  test.each([
    [[1, 1], 'margin must be less than 1, got 1'],
    [[1, 45], 'margin must be less than 1, got 45'],
    [[1, 0.5, 'profit'], 'kind of gain must be one of margin, markup, got "profit"'],
    [[0, 0.5], 'the cost is 0, and no margin on nothing makes a price: enter what it costs'],
    [[-1], 'cost must be at least 0, got -1'],
    [[1, 0.5, '', -1], 'step must be at least 0, got -1'],
  ] as const)('%j answers "%s"', (args, sentence) => {
    expect(runFunction(POUR_PRICE, args)).toEqual([[sentence, '', '']]);
  });

  test('what POUR_MARGIN reads from its price is the margin it says, at least the one asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        evenReal(0, 0.95),
        evenReal(0, 0.3),
        (cost, margin, tax) => {
          const args = [cost, margin, 'margin', 0.05, tax];
          const [row = []] = runFunction(POUR_PRICE, args) as number[][]; // three results: a row
          expect(row[1]).toBeGreaterThanOrEqual(margin - 1e-11); // the noise forgiven at the step
          const read = runFunction(POUR_MARGIN, [row[0], cost, tax]) as number[][]; // as above
          expect(read[0]?.slice(0, 2)).toEqual(row.slice(1));
        },
      ),
    );
  });
});

describe('POUR_MARGIN', () => {
  test.each([
    [
      [0, 5],
      ['a price of 0 has no margin', -1, -5],
    ],
    [
      [5, 0],
      [1, '', 5],
    ],
    [
      [4, 5],
      [-0.25, -0.2, -1],
    ],
  ] as const)('%j answers %j', (args, row) => {
    const answer = runFunction(POUR_MARGIN, args) as (string | number)[][]; // three results: a row
    row.forEach((value, index) => {
      if (typeof value === 'string') expect(answer[0]?.[index]).toBe(value);
      else expect(answer[0]?.[index]).toBeNear(value, { absolute: 1e-12 }); // one division
    });
  });
});

describe('POUR_EXCISE', () => {
  test.each([
    [
      [107.5, '', '', 0.75],
      [75, 7.5, 107.5],
    ],
    [
      [100, '', '', '', 'exempt'],
      [0, 0, 100],
    ],
    [
      [1000, 'added to the price', '', '', '', 'JPY'],
      [1000, 100, 1100],
    ],
  ] as const)('%j answers %j', (args, row) => {
    expect(runFunction(POUR_EXCISE, args)).toEqual([row]);
  });

  test('a column of prices is taxed row by row', () => {
    expect(runFunction(POUR_EXCISE, [[[100], [''], ['x']]])).toEqual([
      [90.91, 9.09, 100],
      ['', '', ''],
      ['price must be a number, got "x"', '', ''],
    ]);
  });
});

describe('POUR_BREAKS', () => {
  const costs = [10, 6, 0.5, 12, 0.5, '', 0.01] as const;

  test('a quantity that has no price says why beside it', () => {
    expect(runFunction(POUR_BREAKS, [[[10], [20]], 0, 0, 0, 12])).toEqual([
      ['quantity', 'price', 'total', 'margin', 'note'],
      [10, NO_COST, '', '', ''],
      [20, NO_COST, '', '', ''],
    ]);
  });

  test.each([
    [[[['x']], ...costs], 'quantity 1 must be a number, got "x"'],
    [[[[5], [1.5]], ...costs], 'quantity 2 must be a whole number, got 1.5'],
    [[[[5]], 10, 6, 0.5, 0], 'pieces per round must be greater than 0, got 0'],
    [[[[5]], 'a', 6, 0.5, 12], 'set-up cost must be a number, got "a"'],
    [[[[5]], 10, 6, 0.5, 12, 1], 'margin must be less than 1, got 1'],
  ])('%j answers "%s"', (args, sentence) => {
    expect(runFunction(POUR_BREAKS, args)).toBe(sentence);
  });

  test('total is price times quantity to the cent', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 100_000 }), { minLength: 1, maxLength: 12 }),
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        (quantities, setUp) => {
          const column = quantities.map((quantity) => [quantity]);
          const answer = runFunction(POUR_BREAKS, [column, setUp, ...costs.slice(1)]);
          const [, ...rows] = answer as number[][]; // a list that is not blank spills
          expect(rows.map(([quantity]) => quantity)).toEqual(quantities);
          for (const [quantity = 0, price = 0, total] of rows)
            expect(total).toBe(Math.round(quantity * price * 100) / 100);
        },
      ),
    );
  });
});

const NO_COST = 'the cost is 0, and no margin on nothing makes a price: enter what it costs';
