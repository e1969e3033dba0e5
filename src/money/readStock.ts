import type { StockAnswer } from '../../shared/commands/stockCommands.ts';
import { stockSummary } from '../../shared/money/stock/stockSummary.ts';
import { readMoneyBookNow } from '../platform/readMoneyBookNow.ts';

/** Page call: what is in stock, what to mend, what the open orders lack and what to buy; takes no payload. */
export function readStock(): StockAnswer {
  return { kind: 'ok', ...stockSummary(readMoneyBookNow()) };
}
