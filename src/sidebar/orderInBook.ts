import type { Book } from '../../shared/book/book.ts';
import { nameKey, type OrderRow } from '../../shared/book/bookIndex.ts';
import { parseClock } from '../../shared/book/reading/clock.ts';
import { describe } from '../../shared/errors/describe.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { unknownOrder } from '../../shared/log/orderToLog.ts';

/** The row of an order by its number: rows move while a page is open. */
export function orderInBook(book: Book, order: string): OrderRow | Refused {
  const row = book.orders.find(({ record }) => nameKey(record.order) === nameKey(order));
  return row ?? { kind: 'refused', problems: [unknownOrder(order)] };
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

export function isRefused(answer: object): answer is Refused {
  return 'kind' in answer && answer.kind === 'refused';
}
