import type { Book } from '../../shared/book/book.ts';
import { parseClock } from '../../shared/book/clock.ts';
import { describe } from '../../shared/errors/describe.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { unknownOrder } from '../../shared/log/orderToLog.ts';
import { nameKey, type OrderRow } from '../../shared/runSheet/bookIndex.ts';
import { refuse } from '../../shared/verbs/refuse.ts';
import type { Refused } from '../../shared/verbs/verbs.ts';

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
