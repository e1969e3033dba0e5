import type { MoneyBook } from '../book/book.ts';
import { ORDERS } from '../book/tables/orders.ts';
import { requireChoice } from '../errors/requireChoice.ts';
import { indexCosts } from './cost/costIndex.ts';
import { type MoneyResult, type OrderMoney, planMoney } from './planMoney.ts';
import { fromMinor } from './toMinor.ts';

/** The columns of *Orders* that are about money and fill themselves, by their headings. */
export const MONEY_COLUMNS = ['cost', 'quote price', 'margin', 'money notes'] as const;

type MoneyColumn = (typeof MONEY_COLUMNS)[number];

type Shown = string | number;

/**
 * One money column of *Orders* as cells: its heading, then one cell for each row of the sheet, blank where the row is blank or has no
 * plan, trailing blanks left off.
 * @param column - one of {@link MONEY_COLUMNS}
 * @param rowsOnSheet - rows of the range, heading row included
 * @throws InputError for a column that is not one of them
 */
export function moneyColumn(
  book: MoneyBook,
  column: string,
  rowsOnSheet: number,
): readonly (readonly [Shown])[] {
  const wanted = requireChoice(column, 'column', MONEY_COLUMNS);
  const costs = indexCosts(book);
  const cells: Shown[] = Array.from({ length: Math.max(0, rowsOnSheet - 1) }, () => '');
  for (const row of book.orders) {
    cells[row.row - 2] = shown(planMoney(costs, row), wanted);
  }
  while (cells.length > 0 && cells[cells.length - 1] === '') cells.pop();
  return [[headingOf(wanted)], ...cells.map((cell) => [cell] as const)];
}

function headingOf(column: MoneyColumn): string {
  const declared = Object.values(ORDERS.columns).find(
    ({ heading }) => heading.toLowerCase() === column,
  );
  return declared?.heading ?? column;
}

function shown(money: MoneyResult, column: MoneyColumn): Shown {
  if (money.kind === 'money') return figureOf(money, column);
  // The warnings of the plan name the rest.
  return column === 'money notes' ? money.moneyGaps.map(({ text }) => text).join('; ') : '';
}

function figureOf({ cost, price, agreed, assumptions }: OrderMoney, column: MoneyColumn): Shown {
  switch (column) {
    case 'cost':
      return fromMinor(cost.total, cost.currency);
    case 'quote price':
      return price.kind === 'price' ? fromMinor(price.goods, price.currency) : '';
    case 'margin':
      return agreed ? (agreed.margin ?? '') : price.kind === 'price' ? (price.margin ?? '') : '';
    case 'money notes':
      return [
        ...assumptions,
        ...(price.kind === 'price' ? [] : [`No price: ${price.because}.`]),
      ].join(' ');
  }
}
