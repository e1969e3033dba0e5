import { BOOKS_TABLES } from '../../shared/book/book.ts';
import type { ExportAnswer, ExportPayload } from '../../shared/commands/booksCommands.ts';
import { describe } from '../../shared/errors/describe.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { books } from '../../shared/money/books/books.ts';
import { EXPORTS, exportTable } from '../../shared/money/books/exportTable.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';
import { NEEDED_TEXT, readPayload } from '../sidebar/readPayload.ts';

/**
 * Page call: one of the tables that the bookkeeper takes along; the page makes a file of it.
 * @param payload `{ what }`, one of `EXPORTS`
 */
export function exportRows(payload: unknown): ExportAnswer | Refused {
  const read = readPayload<ExportPayload>({ what: NEEDED_TEXT }, payload);
  if (read.kind === 'refused') return read;
  const { what } = read.value;
  const name = EXPORTS.find((one) => one === what);
  if (name === undefined) {
    const rule = { kind: 'one of', choices: EXPORTS } as const;
    return refuse('what', describe({ field: 'what', rule, value: what }));
  }
  const book = readBookNow(BOOKS_TABLES);
  const day = today();
  const fileName = `${name} ${day}`.replace(/ /g, '-');
  return { kind: 'ok', fileName, ...exportTable(book, books(book, day), name) };
}
