import { requireNumber } from '../../errors/requireNumber.ts';

/**
 * Margin of a markup: the gain as a share of the price, from the gain as a share of the cost.
 *
 * m = u / (1 + u)
 * @param markup 0 or more; 0.5 is 50 % on top of the cost
 * @returns 0 to below 1
 * @throws InputError `markup must be at least 0, got -0.1`
 * @source MARGIN-MARKUP
 */
export function marginOfMarkup(markup: number): number {
  requireNumber(markup, 'markup', { atLeast: 0 });
  return markup / (1 + markup);
}

/**
 * Markup of a margin: the gain as a share of the cost, from the gain as a share of the price.
 *
 * u = m / (1 - m)
 * @param margin 0 to below 1
 * @throws InputError `margin must be less than 1, got 1`
 * @source MARGIN-MARKUP
 */
export function markupOfMargin(margin: number): number {
  requireNumber(margin, 'margin', { atLeast: 0, lessThan: 1 });
  return margin / (1 - margin);
}

/**
 * Margin and markup that a price turns out to have.
 *
 * margin = (kept - cost) / kept, markup = (kept - cost) / cost
 * @param kept what the shop keeps of the price, any unit of money, >= 0
 * @param cost in the same unit, >= 0
 * @returns margin is absent when nothing is kept, markup when nothing was spent
 */
export function gainOf(
  kept: number,
  cost: number,
): { readonly margin?: number; readonly markup?: number } {
  return {
    ...(kept > 0 ? { margin: (kept - cost) / kept } : {}),
    ...(cost > 0 ? { markup: (kept - cost) / cost } : {}),
  };
}
