import { describe, expect, test } from 'vitest';
import { defineFunction } from '../../../shared/functions/defineFunction.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';

/** A made-up declaration that shows every kind of parameter. */
const BLOCK = defineFunction({
  name: 'POUR_TEST_BLOCK',
  family: 'batch',
  about: 'Volume of a block.',
  params: {
    blockLength: {
      kind: 'number',
      about: 'Length.',
      measure: 'length',
      bounds: { greaterThan: 0 },
    },
    blockHeight: {
      kind: 'number',
      about: 'Height.',
      measure: 'length',
      bounds: { greaterThan: 0 },
      default: 0.0254,
    },
    shape: { kind: 'choice', about: 'Shape.', choices: ['box', 'V'], default: 'box' },
  },
  returns: [{ name: 'area', about: 'Area seen from the side.', kind: 'number' }],
  examples: [],
  notes: '',
  compute: ({ blockLength, blockHeight, shape }) => [
    (blockLength * blockHeight * (shape === 'V' ? 0.5 : 1)) / 0.0254 ** 2,
  ],
});

const TWO = defineFunction({
  ...BLOCK,
  params: BLOCK.params,
  name: 'POUR_TEST_TWO',
  returns: [...BLOCK.returns, { name: 'word', about: 'A word.', kind: 'text' }],
  compute: () => [1, 'yes'],
});

describe('runFunction', () => {
  test('takes cells, converts units both ways, fills defaults', () => {
    expect(runFunction(BLOCK, [2])).toBeNear(2, { relative: 1e-12 });
    expect(runFunction(BLOCK, [2, 3, 'v'])).toBeNear(3, { relative: 1e-12 });
    expect(runFunction(BLOCK, [50.8, '', '', 'metric'])).toBeNear(2, { relative: 1e-12 });
  });

  test('takes a number typed as text and per cent typed as text', () => {
    expect(runFunction(BLOCK, [' 2 '])).toBeNear(2, { relative: 1e-12 });
    expect(runFunction(BLOCK, ['200%'])).toBeNear(2, { relative: 1e-12 });
  });

  test('spreads over a range, keeps its shape, keeps blank rows blank, answers a bad row in its own cell', () => {
    expect(
      runFunction(BLOCK, [
        [
          [1, 2],
          ['', -3],
        ],
      ]),
    ).toEqual([
      [expect.toBeNear(1, { relative: 1e-12 }), expect.toBeNear(2, { relative: 1e-12 })],
      ['', 'block length must be greater than 0 in, got -3 in'],
    ]);
  });

  test.each([
    { args: ['x'], sentence: 'block length must be a number (in), got "x"' },
    { args: [-2], sentence: 'block length must be greater than 0 in, got -2 in' },
    { args: [-2, '', '', 'metric'], sentence: 'block length must be greater than 0 mm, got -2 mm' },
    { args: ['', 3], sentence: 'block length must be given (in), got nothing' },
    { args: [1, 1, 'round'], sentence: 'shape must be one of box, V, got "round"' },
    { args: ['#N/A'], sentence: 'block length must be free of errors, got "#N/A"' },
    { args: [true], sentence: 'block length must be a number (in), got TRUE' },
    { args: [new Date(0)], sentence: 'block length must be a number (in), got a date' },
    { args: [Number.NaN], sentence: 'block length must be a number (in), got not a number' },
    {
      args: [1, 1, 'box', 'imperial'],
      sentence: 'units must be one of US, metric, got "imperial"',
    },
    { args: [1, 1, 'box', 'US', 5], sentence: 'number of arguments must be at most 4, got 5' },
  ])('answers $args with one sentence', ({ args, sentence }) => {
    expect(runFunction(BLOCK, args)).toBe(sentence);
  });

  test('refuses ranges of two shapes, naming the second', () => {
    expect(
      runFunction(BLOCK, [
        [[1], [2]],
        [[1], [2], [3]],
      ]),
    ).toBe('block height must be one cell or a range of 2 × 1, got "3 × 1"');
  });

  test('gives several results as columns, and only for a cell or a column', () => {
    expect(runFunction(TWO, [1])).toEqual([[1, 'yes']]);
    expect(runFunction(TWO, [[[1], [''], [-1]]])).toEqual([
      [1, 'yes'],
      ['', ''],
      ['block length must be greater than 0 in, got -1 in', ''],
    ]);
    expect(runFunction(TWO, [[[1, 2]]])).toBe(
      'block length must be one cell or one column, since the answer fills several columns, got "1 × 2"',
    );
  });

  test('a row is blank when every cell is blank', () => {
    expect(runFunction(BLOCK, [''])).toBe('');
    expect(runFunction(BLOCK, [[['']], 3])).toEqual([['']]);
  });

  test('never shows a result that is not a number', () => {
    const broken = defineFunction({ ...BLOCK, params: BLOCK.params, compute: () => [Number.NaN] });
    expect(runFunction(broken, [1])).toBe('no number answers this: check the inputs');
  });
});
