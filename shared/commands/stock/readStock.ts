import { MONEY_TABLES } from '../../book/book.ts';
import { ledger } from '../../money/stock/ledger.ts';
import { lotTrace } from '../../money/stock/lotTrace.ts';
import { stockSummary } from '../../money/stock/stockSummary.ts';
import { decided, readCommand, showCommand } from '../command.ts';
import { NEEDED_TEXT } from '../readPayload.ts';

/** What is in stock, what to mend, what the open orders lack and what to buy. */
export const readStock = readCommand<'readStock', (typeof MONEY_TABLES)[number]>({
  payload: {},
  tables: MONEY_TABLES,
  answer: (_asked, book) => ({ kind: 'ok', ...stockSummary(book) }),
});

/** Where a lot went, and which lots are in an order or a run. */
export const traceLot = readCommand<'traceLot', 'stockMoves' | 'materials'>({
  payload: { name: NEEDED_TEXT },
  tables: ['stockMoves', 'materials'],
  answer: ({ name }, { stockMoves, materials }) => ({
    kind: 'ok',
    name,
    ...lotTrace(ledger(stockMoves, materials), name),
  }),
});

/** Opens the dialog that shows and prints the purchase list. */
export const showPurchases = showCommand<'showPurchases'>({
  payload: {},
  tables: [],
  decide: (request) =>
    decided({ kind: 'ok' }, { shows: { dialog: 'Purchases', title: 'Purchase list', request } }),
});

/** The purchase list as its dialog draws it. */
export const purchasesFor = readCommand<'purchasesFor', (typeof MONEY_TABLES)[number]>({
  payload: {},
  tables: MONEY_TABLES,
  answer: (_asked, book, context) => {
    const { currency, purchases, uncounted, assumptions } = stockSummary(book);
    const { shopName } = book.shop;
    const date = context.today();
    return { kind: 'ok', shopName, date, currency, purchases, uncounted, assumptions };
  },
});
