import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  countText,
  deviationText,
  durationText,
  gramsText,
  listText,
  rounded,
  shareText,
  temperatureText,
  volumeText,
} from '../../shared/words/quantityText.ts';
import { evenReal } from '../evenReal.ts';

describe('figures as the shop reads them', () => {
  test.each([
    { shown: temperatureText(132.2222222, 'US'), expected: '270 °F' },
    { shown: temperatureText(101.2, 'US', 'up'), expected: '215 °F' }, // 214.16
    { shown: temperatureText(190, 'US', 'down'), expected: '374 °F' },
    { shown: temperatureText(101.2, 'metric', 'down'), expected: '101 °C' },
    { shown: temperatureText(100, 'US', 'up'), expected: '212 °F' }, // no step up for a binary digit
    { shown: volumeText(1.774e-4, 'US'), expected: '6.0 fl oz' },
    { shown: volumeText(1.774e-4, 'metric'), expected: '177 mL' },
    { shown: gramsText(0.00042), expected: '0.42 g' },
    { shown: gramsText(0.0581), expected: '58.1 g' },
    { shown: gramsText(0.1562), expected: '156 g' },
    { shown: shareText(0.025), expected: '2.5 %' },
    { shown: shareText(0.35), expected: '35 %' },
    { shown: shareText(0.07), expected: '7 %' },
    { shown: durationText(41.2, 'up'), expected: '42 s' },
    { shown: durationText(41.9, 'down'), expected: '41 s' },
    { shown: durationText(141, 'up'), expected: '2 min 25 s' },
    { shown: durationText(141, 'down'), expected: '2 min 20 s' },
    { shown: durationText(119.9, 'up'), expected: '2 min' },
    { shown: durationText(1530), expected: '26 min' },
    { shown: countText(1, 'cup'), expected: '1 cup' },
    { shown: countText(3, 'cavity', 'cavities'), expected: '3 cavities' },
    { shown: deviationText(-0.0961), expected: ' (off by 10 %)' },
    { shown: deviationText(0.0049), expected: '' },
    { shown: listText([]), expected: '' },
    { shown: listText(['salt']), expected: 'salt' },
    { shown: listText(['salt', 'mica']), expected: 'salt and mica' },
    { shown: listText(['salt', 'mica', 'flake']), expected: 'salt, mica and flake' },
  ])('$expected', ({ shown, expected }) => {
    expect(shown).toBe(expected);
  });

  test('rounding never widens a window: up is never below, down never above, both within a step', () => {
    fc.assert(
      fc.property(evenReal(0, 5000), fc.constantFrom(1, 5, 60), (value, step) => {
        const slack = 1e-8; // binary digits that a multiple may miss by
        expect(rounded(value, step, 'up')).toBeGreaterThanOrEqual(value - slack);
        expect(rounded(value, step, 'down')).toBeLessThanOrEqual(value + slack);
        expect(rounded(value, step, 'up') - rounded(value, step, 'down')).toBeLessThanOrEqual(step);
      }),
    );
  });
});
