import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  rounded,
  sayCount,
  sayDuration,
  sayGrams,
  sayList,
  sayOff,
  sayShare,
  sayTemperature,
  sayVolume,
} from '../../shared/words/say.ts';

describe('figures as the shop reads them', () => {
  test.each([
    { shown: sayTemperature(132.2222222, 'US'), expected: '270 °F' },
    { shown: sayTemperature(101.2, 'US', 'up'), expected: '215 °F' }, // 214.16
    { shown: sayTemperature(190, 'US', 'down'), expected: '374 °F' },
    { shown: sayTemperature(101.2, 'metric', 'down'), expected: '101 °C' },
    { shown: sayTemperature(100, 'US', 'up'), expected: '212 °F' }, // no step up for a binary digit
    { shown: sayVolume(1.774e-4, 'US'), expected: '6.0 fl oz' },
    { shown: sayVolume(1.774e-4, 'metric'), expected: '177 mL' },
    { shown: sayGrams(0.00042), expected: '0.42 g' },
    { shown: sayGrams(0.0581), expected: '58.1 g' },
    { shown: sayGrams(0.1562), expected: '156 g' },
    { shown: sayShare(0.025), expected: '2.5 %' },
    { shown: sayShare(0.35), expected: '35 %' },
    { shown: sayShare(0.07), expected: '7 %' },
    { shown: sayDuration(41.2, 'up'), expected: '42 s' },
    { shown: sayDuration(41.9, 'down'), expected: '41 s' },
    { shown: sayDuration(141, 'up'), expected: '2 min 25 s' },
    { shown: sayDuration(141, 'down'), expected: '2 min 20 s' },
    { shown: sayDuration(119.9, 'up'), expected: '2 min' },
    { shown: sayDuration(1530), expected: '26 min' },
    { shown: sayCount(1, 'cup'), expected: '1 cup' },
    { shown: sayCount(3, 'cavity', 'cavities'), expected: '3 cavities' },
    { shown: sayOff(-0.0961), expected: ' (off by 10 %)' },
    { shown: sayOff(0.0049), expected: '' },
    { shown: sayList([]), expected: '' },
    { shown: sayList(['salt']), expected: 'salt' },
    { shown: sayList(['salt', 'mica']), expected: 'salt and mica' },
    { shown: sayList(['salt', 'mica', 'flake']), expected: 'salt, mica and flake' },
  ])('$expected', ({ shown, expected }) => {
    expect(shown).toBe(expected);
  });

  test('rounding never widens a window: up is never below, down never above, both within a step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.constantFrom(1, 5, 60),
        (value, step) => {
          const slack = 1e-8; // binary digits that a multiple may miss by
          expect(rounded(value, step, 'up')).toBeGreaterThanOrEqual(value - slack);
          expect(rounded(value, step, 'down')).toBeLessThanOrEqual(value + slack);
          expect(rounded(value, step, 'up') - rounded(value, step, 'down')).toBeLessThanOrEqual(
            step,
          );
        },
      ),
    );
  });
});
