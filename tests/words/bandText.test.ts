import { describe, expect, test } from 'vitest';
import { bandText } from '../../shared/words/bandText.ts';
import { durationText } from '../../shared/words/quantityText.ts';

describe('bandText', () => {
  const inSeconds = (band: Parameters<typeof bandText>[0]) =>
    bandText(
      band,
      (low) => durationText(low, 'down'),
      (high) => durationText(high, 'up'),
    );

  test.each([
    { band: { low: 45, high: 80 }, expected: ' (45 to 80 s)' },
    { band: { low: 50, high: 120 }, expected: ' (50 s to 2 min)' },
    { band: { low: 80, high: 155 }, expected: ' (80 s to 2 min 35 s)' },
    { band: { low: 1140 }, expected: ' (19 min or more)' },
    { band: { high: 50 }, expected: ' (50 s or less)' },
    { band: { low: 60, high: 60 }, expected: '' },
    { band: {}, expected: '' },
    { band: undefined, expected: '' },
  ])('$band reads "$expected"', ({ band, expected }) => {
    expect(inSeconds(band)).toBe(expected);
  });
});
