import { isRefused, readCommand } from '../command.ts';
import { orderInBook, selectedOrder, withFirstPour } from '../orderInBook.ts';
import { OPTIONAL_TEXT } from '../readPayload.ts';
import { DETAIL_TABLES, planOfRow } from './planOfOrder.ts';

/**
 * The plan of the selected row of *Orders*, or of the order on show when one is named, so that another pour time does not jump
 * to another row.
 */
export const planSelectedOrder = readCommand<'planSelectedOrder', (typeof DETAIL_TABLES)[number]>({
  payload: { order: OPTIONAL_TEXT, firstPour: OPTIONAL_TEXT },
  tables: DETAIL_TABLES,
  answer: ({ order, firstPour }, book, context) => {
    const found = order === undefined ? selectedOrder(book, context) : orderInBook(book, order);
    const row = isRefused(found) ? found : withFirstPour(found, firstPour);
    return isRefused(row) ? row : { kind: 'ok', plan: planOfRow(book, row) };
  },
});
