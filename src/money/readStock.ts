import type { StockAnswer } from '../../shared/commands/stockVerbs.ts';
import { stockOnShow } from '../../shared/money/stock/stockOnShow.ts';
import { readMoneyBookNow } from '../platform/readMoneyBookNow.ts';

/** Page call: what is in stock, what to mend, what the open orders lack and what to buy; takes no payload. */
export function readStock(): StockAnswer {
  return { kind: 'ok', ...stockOnShow(readMoneyBookNow()) };
}
