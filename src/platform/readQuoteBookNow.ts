import { readTable } from '../../shared/book/reading/readTable.ts';
import { QUOTES } from '../../shared/book/tables/quotes.ts';
import type { QuoteBook } from '../../shared/money/quote/quoteBook.ts';
import { readMoneyBookNow } from './readMoneyBookNow.ts';
import { readCells } from './workbook.ts';

/** The book of money with its quotes. */
export function readQuoteBookNow(): QuoteBook {
  return { ...readMoneyBookNow(), quotes: readTable(QUOTES, readCells(QUOTES.sheet)).rows };
}
