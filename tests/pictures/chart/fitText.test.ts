import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitText, textWidth } from '../../../shared/pictures/chart/fitText.ts';

describe('fitText', () => {
  test('leaves what fits and cuts what does not with an ellipsis, never wider than the room', () => {
    expect(fitText('belly', 60, 12)).toBe('belly');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        expect(textWidth(fitText(text, 80, 12), 12)).toBeLessThanOrEqual(80);
      }),
    );
  });
});
