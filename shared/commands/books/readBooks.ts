import { BOOKS_TABLES } from '../../book/book.ts';
import { describe } from '../../errors/describe.ts';
import { refuse } from '../../errors/refuse.ts';
import { books } from '../../money/books/books.ts';
import { booksSummary } from '../../money/books/booksSummary.ts';
import { EXPORTS, exportTable } from '../../money/books/exportTable.ts';
import { readCommand } from '../command.ts';
import { NEEDED_TEXT } from '../readPayload.ts';

/** Sales, cost and margin by month, excise by quarter and what customers owe. */
export const readBooks = readCommand<'readBooks', (typeof BOOKS_TABLES)[number]>({
  payload: {},
  tables: BOOKS_TABLES,
  answer: (_asked, book, context) => ({
    kind: 'ok',
    ...booksSummary(book, books(book, context.today())),
  }),
});

/** One of the tables that the bookkeeper takes along; the page makes a file of it. */
export const exportRows = readCommand<'exportRows', (typeof BOOKS_TABLES)[number]>({
  payload: { what: NEEDED_TEXT },
  tables: BOOKS_TABLES,
  answer: ({ what }, book, context) => {
    const name = EXPORTS.find((one) => one === what);
    if (name === undefined) {
      const rule = { kind: 'one of', choices: EXPORTS } as const;
      return refuse('what', describe({ field: 'what', rule, value: what }));
    }
    const day = context.today();
    const fileName = `${name} ${day}`.replace(/ /g, '-');
    return { kind: 'ok', fileName, ...exportTable(book, books(book, day), name) };
  },
});
