import { BOOKS_TABLES } from '../../shared/book/book.ts';
import type { BooksAnswer } from '../../shared/commands/booksCommands.ts';
import { books } from '../../shared/money/books/books.ts';
import { booksSummary } from '../../shared/money/books/booksSummary.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';

/** Page call: sales, cost and margin by month, excise by quarter and what customers owe; takes no payload. */
export function readBooks(): BooksAnswer {
  const book = readBookNow(BOOKS_TABLES);
  return { kind: 'ok', ...booksSummary(book, books(book, today())) };
}
