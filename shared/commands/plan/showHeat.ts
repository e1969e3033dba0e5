import { decided, isRefused, showCommand } from '../command.ts';
import { orderInBook } from '../orderInBook.ts';
import { ORDER_FIELDS } from './planOfOrder.ts';

/** Opens the dialog that draws the heat of an order; it asks for the pictures itself. */
export const showHeat = showCommand<'showHeat', 'orders'>({
  payload: ORDER_FIELDS,
  tables: ['orders'],
  decide: (asked, book) => {
    const { order } = asked;
    const found = orderInBook(book, order);
    if (isRefused(found)) return found;
    return decided(
      { kind: 'ok', order },
      { shows: { dialog: 'Heat', title: `Heat of order ${order}`, request: asked } },
    );
  },
});
