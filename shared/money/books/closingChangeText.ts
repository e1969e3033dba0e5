import type { CurrencyCode } from '../../book/currencies.ts';
import { moneyText } from '../../words/moneyText.ts';
import type { SinceClosing } from './booksTypes.ts';

const NAMES = [
  ['sales', 'sales'],
  ['costOfGoods', 'cost of goods'],
  ['margin', 'margin'],
  ['exciseBase', 'excise base'],
  ['exciseTax', 'excise tax'],
] as const;

/**
 * What is another now than when a month was closed: `since closing: +$12.50 sales, order 1006 changed`.
 * @returns "" when nothing is
 */
export function closingChangeText(
  { change, orders }: Pick<SinceClosing, 'change' | 'orders'>,
  currency: CurrencyCode,
): string {
  const sums = NAMES.filter(([key]) => change[key] !== 0).map(
    ([key, name]) => `${change[key] > 0 ? '+' : ''}${moneyText(change[key], currency)} ${name}`,
  );
  const changed = orders ?? [];
  if (sums.length + changed.length === 0) return '';
  const names =
    changed.length === 0
      ? []
      : [`${changed.length === 1 ? 'order' : 'orders'} ${changed.join(', ')} changed`];
  return `since closing: ${[...sums, ...names].join(', ')}`;
}
