import { describe, expect, test } from 'vitest';
import { describe as words } from '../../../shared/errors/describe.ts';
import { InputError } from '../../../shared/errors/InputError.ts';
import { typedAmount } from '../../../shared/money/stock/typedAmount.ts';

const WHITE = { material: 'White', packUnit: 'fl oz', density: 1600, dropVolume: 5e-8 } as const;

function messageOf(text: string, material: Parameters<typeof typedAmount>[2] = WHITE): string {
  try {
    return String(typedAmount(text, 'White used', material));
  } catch (error) {
    if (error instanceof InputError) return words(error);
    throw error;
  }
}

describe('typedAmount', () => {
  test.each([
    { text: '0.5', expected: 0.5 },
    { text: ' 2e-1 ', expected: 0.2 },
    { text: '0.5 fl oz', expected: 0.5 },
    { text: '0.5FL  OZ', expected: 0.5 },
    // HB44, Appendix C: 29.5735295625 mL in a fl oz.
    { text: '29.5735295625 mL', expected: 1 },
    { text: '47.3176473 g', expected: 1 }, // 1.6 g/mL
    { text: '0.0473176473 kg', expected: 1 },
    { text: '1 gal', expected: 128 },
    { text: '591.47059125 drops', expected: 1 }, // GNUUNITS: 20 to the mL
    { text: '0 drop', expected: 0 },
  ])('reads $text as $expected fl oz', ({ text, expected }) => {
    expect(typedAmount(text, 'White used', WHITE)).toBeNear(expected, { absolute: 1e-12 }); // binary rounding
  });

  test.each([
    { text: 'some', message: 'White used must be a number, got "some"' },
    { text: '-1 g', message: 'White used must be at least 0, got -1' },
    { text: '1e7 g', message: 'White used must be at most 1000000, got 10000000' },
    { text: '3,5', message: 'White used must be a number, got "3,5"' },
    {
      text: '3 spoons',
      message:
        'White used must be a number, alone or with g, kg, oz, lb, mL, fl oz, gal or drops, got "3 spoons"',
    },
    {
      text: '3 constructor',
      message:
        'White used must be a number, alone or with g, kg, oz, lb, mL, fl oz, gal or drops, got "3 constructor"',
    },
  ])('refuses $text', ({ text, message }) => {
    expect(messageOf(text)).toBe(message);
  });

  test('says what is missing to turn a weight into the pack unit', () => {
    expect(messageOf('3 g', { material: 'White', packUnit: 'fl oz' })).toBe(
      'White used must be in fl oz, since the density of White must be given in Materials to turn its weight into a volume and back, got "3 g"',
    );
    expect(messageOf('3 g', { material: 'Hook', packUnit: 'each' })).toBe(
      'White used must be a number of pieces, got "3 g"',
    );
  });
});
