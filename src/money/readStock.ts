import { MONEY_TABLES } from '../../shared/book/book.ts';
import type { StockAnswer } from '../../shared/commands/stockCommands.ts';
import { stockSummary } from '../../shared/money/stock/stockSummary.ts';
import { readBookNow } from '../platform/readBookNow.ts';

/** Page call: what is in stock, what to mend, what the open orders lack and what to buy; takes no payload. */
export function readStock(): StockAnswer {
  return { kind: 'ok', ...stockSummary(readBookNow(MONEY_TABLES)) };
}
