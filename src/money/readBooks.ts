import type { BooksAnswer } from '../../shared/commands/booksVerbs.ts';
import { books } from '../../shared/money/books/books.ts';
import { booksOnShow } from '../../shared/money/books/booksOnShow.ts';
import { readBooksBookNow } from '../platform/readBooksBookNow.ts';
import { today } from '../platform/today.ts';

/** Page call: sales, cost and margin by month, excise by quarter and what customers owe; takes no payload. */
export function readBooks(): BooksAnswer {
  const book = readBooksBookNow();
  return { kind: 'ok', ...booksOnShow(book, books(book, today())) };
}
