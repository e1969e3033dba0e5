import type { Book } from '../book/book.ts';
import { nameKey, type OrderRow } from '../book/bookIndex.ts';
import { parseClock } from '../book/reading/parseClock.ts';
import { describe } from '../errors/describe.ts';
import { InputError } from '../errors/InputError.ts';
import { type Refused, refuse } from '../errors/refuse.ts';
import { unknownOrder } from '../log/orderToLog.ts';
import type { Context } from './command.ts';

type Orders = Pick<Book, 'orders'>;

/** The row of an order by its number: rows move while a page is open. */
export function orderInBook(book: Orders, order: string): OrderRow | Refused {
  const row = book.orders.find(({ record }) => nameKey(record.order) === nameKey(order));
  return row ?? { kind: 'refused', problems: [unknownOrder(order)] };
}

/** The order in the row of the current cell, or in plain words what to select. */
export function selectedOrder(book: Orders, { cells, selection }: Context): OrderRow | Refused {
  if (cells('orders').length === 0)
    return refuse('', 'There is no sheet Orders yet: choose Poursmith > Set up this workbook.');
  const { sheet, row: selected } = selection();
  if (sheet !== 'Orders') return refuse('', 'Select a row on the sheet Orders first.');
  if (selected === 1)
    return refuse('', 'The heading row is selected: select a row that holds an order.');
  const row = book.orders.find((one) => one.row === selected);
  return row ?? refuse('', `Row ${selected} of Orders is blank: select a row that holds an order.`);
}

/** The row with another clock time for the first pour, where one was chosen. */
export function withFirstPour(row: OrderRow, firstPour: string | undefined): OrderRow | Refused {
  if (firstPour === undefined || firstPour.trim() === '') return row;
  try {
    const minutes = parseClock(firstPour, 'first pour');
    return { row: row.row, record: { ...row.record, firstPour: minutes } };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return refuse('firstPour', describe(error));
  }
}
