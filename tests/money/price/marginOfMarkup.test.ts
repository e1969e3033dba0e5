import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  gainOf,
  marginOfMarkup,
  markupOfMargin,
} from '../../../shared/money/price/marginOfMarkup.ts';
import { evenReal } from '../../evenReal.ts';
import { errorText } from '../../heat/errorText.ts';

describe('margin and markup', () => {
  test.each([
    { margin: 0.3333, markup: 0.5, within: 5e-5, source: 'MARGIN-MARKUP, two places of per cent' },
    { margin: 0.5, markup: 1, within: 1e-15, source: 'MARGIN-MARKUP, exact' },
    { margin: 0.75, markup: 3, within: 1e-15, source: 'MARGIN-MARKUP, exact' },
  ])('a margin of $margin is a markup of $markup', ({ margin, markup, within }) => {
    expect(marginOfMarkup(markup)).toBeNear(margin, { absolute: within });
    expect(markupOfMargin(margin)).toBeNear(markup, { absolute: 3 * within }); // grows by 1 / (1 - m)²
  });

  test('a cost of 40 sold at 60 has a margin of 33.33 % and a markup of 50 %', () => {
    const { margin, markup } = gainOf(60, 40); // MARGIN-MARKUP
    expect(margin).toBeNear(0.3333, { absolute: 5e-5 }); // printed to two places of per cent
    expect(markup).toBe(0.5);
  });

  test('each undoes the other, and both agree with the price they make', () => {
    fc.assert(
      fc.property(
        evenReal(0, 0.99),
        fc.double({ min: 0.01, max: 1e6, noNaN: true }),
        (margin, cost) => {
          const markup = markupOfMargin(margin);
          expect(marginOfMarkup(markup)).toBeNear(margin, { absolute: 1e-14 }); // a few roundings
          const gain = gainOf(cost * (1 + markup), cost);
          expect(gain.margin).toBeNear(margin, { absolute: 1e-12 }); // differences of near figures
          expect(gain.markup).toBeNear(markup, { absolute: 1e-12 * (1 + markup) });
        },
      ),
    );
  });

  test('nothing kept has no margin, nothing spent no markup', () => {
    expect(gainOf(0, 5)).toEqual({ markup: -1 });
    expect(gainOf(5, 0)).toEqual({ margin: 1 });
    expect(gainOf(0, 0)).toEqual({});
  });

  test.each([
    ['margin must be less than 1, got 1', markupOfMargin, 1],
    ['margin must be at least 0, got -0.1', markupOfMargin, -0.1],
    ['markup must be at least 0, got -0.1', marginOfMarkup, -0.1],
    ['markup must be a number, got not a number', marginOfMarkup, Number.NaN],
  ] as const)('refuses: %s', (sentence, convert, share) => {
    expect(errorText(() => convert(share))).toBe(sentence);
  });
});
