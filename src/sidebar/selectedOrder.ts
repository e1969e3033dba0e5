import type { Book } from '../../shared/book/book.ts';
import type { OrderRow } from '../../shared/book/bookIndex.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { findSheet, workbook } from '../platform/workbook.ts';

/** The order in the row of the current cell, or in plain words what to select. */
export function selectedOrder(book: Book): OrderRow | Refused {
  if (findSheet('Orders') === null)
    return refuse('', 'There is no sheet Orders yet: choose Poursmith > Set up this workbook.');
  if (workbook().getActiveSheet().getName() !== 'Orders')
    return refuse('', 'Select a row on the sheet Orders first.');
  const selected = workbook().getCurrentCell()?.getRow() ?? 1;
  if (selected === 1)
    return refuse('', 'The heading row is selected: select a row that holds an order.');
  const row = book.orders.find((one) => one.row === selected);
  return row ?? refuse('', `Row ${selected} of Orders is blank: select a row that holds an order.`);
}
