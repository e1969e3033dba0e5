import { expect, describe as group, test } from 'vitest';
import { describe } from '../../shared/errors/describe.ts';
import { describeIn } from '../../shared/errors/describeIn.ts';
import { InputError, type InputFacts } from '../../shared/errors/InputError.ts';
import { requireChoice } from '../../shared/errors/requireChoice.ts';
import { requireGreater } from '../../shared/errors/requireGreater.ts';
import { requireNumber } from '../../shared/errors/requireNumber.ts';

function sentenceOf(work: () => void): string {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return describe(error);
    throw error;
  }
  return 'nothing was refused';
}

group('describe', () => {
  test.each<{ facts: InputFacts; sentence: string }>([
    {
      facts: {
        field: 'thickness',
        rule: { kind: 'greater than', limit: 0 },
        value: -3,
        unit: 'mm',
      },
      sentence: 'thickness must be greater than 0 mm, got -3 mm',
    },
    {
      facts: { field: 'cavity volume', rule: { kind: 'given' }, value: '', unit: 'floz' },
      sentence: 'cavity volume must be given (fl oz), got nothing',
    },
    {
      facts: { field: 'mold', rule: { kind: 'given' }, value: undefined },
      sentence: 'mold must be given, got nothing',
    },
    {
      facts: { field: 'mold', rule: { kind: 'known', where: 'Molds' }, value: 'X' },
      sentence: 'mold must be listed in Molds, got "X"',
    },
    {
      facts: { field: 'pieces', rule: { kind: 'whole number' }, value: 2.5 },
      sentence: 'pieces must be a whole number, got 2.5',
    },
    {
      facts: { field: 'pieces', rule: { kind: 'number' }, value: true },
      sentence: 'pieces must be a number, got TRUE',
    },
    {
      facts: { field: 'pieces', rule: { kind: 'number' }, value: Number.NaN, unit: 'mm' },
      sentence: 'pieces must be a number (mm), got not a number',
    },
    {
      facts: { field: 'day', rule: { kind: 'form', wanted: 'a date' }, value: 'x'.repeat(60) },
      sentence: `day must be a date, got "${'x'.repeat(40)}…"`,
    },
    {
      facts: {
        field: 'top',
        rule: { kind: 'at most', limit: 190, what: 'the hard stop' },
        value: 200,
        unit: 'degC',
      },
      sentence: 'top must be at most the hard stop (190 °C), got 200 °C',
    },
  ])('says: $sentence', ({ facts, sentence }) => {
    expect(describe(facts)).toBe(sentence);
  });

  test('describeIn turns engine units into the system’s and leaves people’s units alone', () => {
    const error = {
      field: 'mold top',
      rule: { kind: 'at most', limit: 100 },
      value: 150,
      unit: 'degC',
    } as const;
    expect(describeIn(error, 'US')).toBe('mold top must be at most 212 °F, got 302 °F');
    expect(describeIn(error, 'metric')).toBe('mold top must be at most 100 °C, got 150 °C');
    expect(describeIn({ ...error, unit: 'degF' }, 'metric')).toBe(
      'mold top must be at most 100 °F, got 150 °F',
    );
  });
});

group('requirements', () => {
  test.each([
    { bounds: { greaterThan: 0 }, bad: 0, good: 1e-9, sentence: 'x must be greater than 0, got 0' },
    { bounds: { atLeast: 0 }, bad: -1, good: 0, sentence: 'x must be at least 0, got -1' },
    { bounds: { lessThan: 1 }, bad: 1, good: 0.5, sentence: 'x must be less than 1, got 1' },
    { bounds: { atMost: 1 }, bad: 2, good: 1, sentence: 'x must be at most 1, got 2' },
    { bounds: { whole: true }, bad: 1.5, good: 1, sentence: 'x must be a whole number, got 1.5' },
    {
      bounds: {},
      bad: Number.POSITIVE_INFINITY,
      good: 1,
      sentence: 'x must be a number, got infinity',
    },
  ] as const)('requireNumber refuses $bad under $bounds', ({ bounds, bad, good, sentence }) => {
    expect(sentenceOf(() => requireNumber(bad, 'x', bounds))).toBe(sentence);
    expect(sentenceOf(() => requireNumber(good, 'x', bounds))).toBe('nothing was refused');
  });

  test('requireGreater names both', () => {
    const mold = { field: 'mold temperature', value: 100 };
    expect(
      sentenceOf(() => requireGreater({ field: 'pour temperature', value: 90 }, mold, 'degC')),
    ).toBe('pour temperature must be greater than mold temperature (100 °C), got 90 °C');
    expect(
      sentenceOf(() => requireGreater({ field: 'pour temperature', value: 101 }, mold, 'degC')),
    ).toBe('nothing was refused');
  });

  test('requireChoice lists the choices', () => {
    expect(requireChoice('open', 'kind', ['open', 'two-piece'])).toBe('open');
    expect(sentenceOf(() => requireChoice('round', 'kind', ['open', 'two-piece']))).toBe(
      'kind must be one of open, two-piece, got "round"',
    );
  });
});
