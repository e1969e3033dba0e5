import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defineSpill } from '../../../shared/functions/defineSpill.ts';
import type { CellArgument } from '../../../src/functions/cellArgument.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';

/** A made-up declaration that shows every kind of list. */
const STAIRS = defineSpill({
  name: 'POUR_TEST_STAIRS',
  family: 'heat',
  about: 'Heights and steps.',
  params: {
    heights: {
      kind: 'list',
      item: 'step height',
      about: 'Heights.',
      measure: 'length',
      bounds: { greaterThan: 0 },
      most: 4,
    },
    weights: {
      kind: 'list',
      item: 'weight',
      about: 'Weights.',
      bounds: { atLeast: 0 },
      matches: { list: 'heights' },
      oneForAll: true,
    },
    factor: { kind: 'number', about: 'Times.', bounds: { greaterThan: 0 }, default: 1 },
    gaps: {
      kind: 'list',
      item: 'gap',
      about: 'Between.',
      bounds: { greaterThan: 0 },
      matches: { list: 'heights', less: 1 },
      oneForAll: true,
      optional: true,
    },
    marks: {
      kind: 'list',
      item: 'mark',
      about: 'Marks.',
      bounds: {},
      matches: { list: 'heights' },
      optional: true,
    },
  },
  returns: [
    { name: 'step', about: 'Place.', kind: 'number' },
    { name: 'height', about: 'Height.', kind: 'number', measure: 'length' },
    { name: 'note', about: 'All else.', kind: 'text' },
    { name: 'rise', about: 'Height.', kind: 'number', measure: 'length', perItemOf: 'heights' },
  ],
  examples: [],
  notes: '',
  compute: ({ heights, weights, factor, gaps, marks }) =>
    heights.map((height, index) => [
      index + 1,
      height * factor,
      `${weights.join('+')} ${gaps.join('+')} ${marks.join('+')}`,
      ...heights,
    ]),
});

function column(...cells: readonly (string | number)[]): CellArgument {
  return cells.map((cell) => [cell]);
}

describe('a table that spills', () => {
  test('its first row is the headings with units, its columns per item side by side', () => {
    expect(runFunction(STAIRS, [column(1, 2), column(5, 6), '', 7, column(8, 9)])).toEqual([
      ['step', 'height (in)', 'note', 'layer 1 rise (in)', 'layer 2 rise (in)'],
      [1, expect.toBeNear(1, { relative: 1e-12 }), '5+6 7 8+9', 1, 2],
      [2, expect.toBeNear(2, { relative: 1e-12 }), '5+6 7 8+9', 1, 2],
    ]);
    expect(runFunction(STAIRS, [10, 5, '', '', '', 'metric'])).toEqual([
      ['step', 'height (mm)', 'note', 'layer 1 rise (mm)'],
      [1, 10, '5  ', 10],
    ]);
  });

  test('a column, a row and a cell are one list; one cell serves every place', () => {
    const expected = runFunction(STAIRS, [column(1, 2, 3), column(5, 5, 5), '', column(7, 7)]);
    expect(runFunction(STAIRS, [[[1, 2, 3]], [[5, 5, 5]], [['']], [[7, 7]]])).toEqual(expected);
    expect(runFunction(STAIRS, [column(1, 2, 3), 5, 1, [[7]], ''])).toEqual(expected);
    expect(runFunction(STAIRS, [[[4]], 5])).toEqual(runFunction(STAIRS, [4, [[5]]]));
  });

  test('blanks at the end do not count, however many', () => {
    const blanks = Array<string>(9_997).fill('');
    expect(runFunction(STAIRS, [column(1, 2, 3, ...blanks), column(5, 5, 5, ' ')])).toEqual(
      runFunction(STAIRS, [column(1, 2, 3), 5]),
    );
  });

  test('it is blank while every list is', () => {
    expect(runFunction(STAIRS, [])).toBe('');
    expect(runFunction(STAIRS, [column('', ''), column('', ''), 3])).toBe('');
  });

  test.each([
    {
      args: [column(1, -1), 5],
      sentence: 'step height 2 must be greater than 0 in, got -1 in',
    },
    {
      args: [column(1, -1), 5, '', '', '', 'metric'],
      sentence: 'step height 2 must be greater than 0 mm, got -1 mm',
    },
    { args: [column(1, '', 3), 5], sentence: 'step height 2 must be given (in), got nothing' },
    { args: [column('', 3), 5], sentence: 'step height 1 must be given (in), got nothing' },
    { args: [column(1, 'x'), 5], sentence: 'step height 2 must be a number (in), got "x"' },
    { args: [column(1, '#N/A'), 5], sentence: 'step height 2 must be free of errors, got "#N/A"' },
    {
      args: [[[1], [new Date(0)]], 5],
      sentence: 'step height 2 must be a number (in), got a date',
    },
    { args: [[[1], [true]], 5], sentence: 'step height 2 must be a number (in), got TRUE' },
    {
      args: [column(1, Number.NaN), 5],
      sentence: 'step height 2 must be a number (in), got not a number',
    },
    { args: [column(1, 2), -5], sentence: 'weight must be at least 0, got -5' },
    { args: ['', 5], sentence: 'heights must be given (in), got nothing' },
    { args: [column(1, 2)], sentence: 'weights must be given, got nothing' },
    {
      args: [
        [
          [1, 2],
          [3, 4],
        ],
        5,
      ],
      sentence: 'heights must be one column or one row, got "2 × 2"',
    },
    {
      args: [column(1, 2, 3), column(5, 6)],
      sentence: 'weights must be 3 numbers, as many as heights, or one for all, got 2',
    },
    {
      args: [column(1, 2, 3), 5, 1, column(1, 2, 3)],
      sentence: 'gaps must be 2 numbers, one fewer than heights, or one for all, got 3',
    },
    {
      args: [column(1, 2), 5, 1, '', column(3)],
      sentence: 'marks must be 2 numbers, as many as heights, got 1',
    },
    {
      args: [column(...Array<number>(10_000).fill(1)), 5],
      sentence: 'number of heights must be at most 4, got 10000',
    },
    {
      args: [column(1, 2), 5, column(1, 2)],
      sentence: 'factor must be one cell, got "2 × 1"',
    },
    {
      args: [1, 5, 1, '', '', 'imperial'],
      sentence: 'units must be one of US, metric, got "imperial"',
    },
    { args: [1, 5, 1, '', '', 'US', 7], sentence: 'number of arguments must be at most 6, got 7' },
  ])('answers $args with one sentence', ({ args, sentence }) => {
    expect(runFunction(STAIRS, args)).toBe(sentence);
  });

  test('any cells at all give a table or a sentence, and leave the range as it was', () => {
    const cell = fc.oneof(
      fc.double(),
      fc.string(),
      fc.boolean(),
      fc.constantFrom('', null, undefined, '#REF!', new Date(0)),
    );
    const argument = fc.oneof(cell, fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 6 }));
    fc.assert(
      fc.property(fc.array(argument, { maxLength: 6 }), (args) => {
        for (const range of args) if (Array.isArray(range)) Object.freeze(range);
        const answer = runFunction(STAIRS, args);
        for (const shown of Array.isArray(answer) ? answer.flat() : [answer]) {
          expect(['string', 'number']).toContain(typeof shown);
          if (typeof shown === 'number') expect(Number.isFinite(shown)).toBe(true);
        }
      }),
    );
  });

  test('never shows a result that is not a number, nor more than 500 rows', () => {
    const rows = (count: number, value: number) =>
      defineSpill({
        ...STAIRS,
        params: {},
        returns: STAIRS.returns.slice(0, 1),
        compute: () => Array.from({ length: count }, () => [value]),
      });
    const one = { ...rows(1, Number.NaN), params: STAIRS.params };
    expect(runFunction(one, [1, 1])).toEqual([
      ['step'],
      ['no number answers this: check the inputs'],
    ]);
    const many = { ...rows(501, 1), params: STAIRS.params };
    expect(runFunction(many, [1, 1])).toBe('number of rows must be at most 500, got 501');
  });
});
