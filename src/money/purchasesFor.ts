import { MONEY_TABLES } from '../../shared/book/book.ts';
import type { PurchasesAnswer } from '../../shared/commands/stockCommands.ts';
import { stockSummary } from '../../shared/money/stock/stockSummary.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';

/** Page call: the purchase list as its dialog draws it; takes no payload. */
export function purchasesFor(): PurchasesAnswer {
  const book = readBookNow(MONEY_TABLES);
  const { currency, purchases, uncounted, assumptions } = stockSummary(book);
  const { shopName } = book.shop;
  return { kind: 'ok', shopName, date: today(), currency, purchases, uncounted, assumptions };
}
