import { MONEY_TABLES } from '../../shared/book/book.ts';
import { STOCK_MOVES } from '../../shared/book/tables/stockMoves.ts';
import type { UsePayload, UsePosted } from '../../shared/commands/stockCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { ledger } from '../../shared/money/stock/ledger.ts';
import type { MoveRow } from '../../shared/money/stock/ledgerTypes.ts';
import { recordsOfUse, type TypedAmounts } from '../../shared/money/stock/recordsOfUse.ts';
import { appendRows } from '../book/appendRows.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { readPayload } from '../sidebar/readPayload.ts';
import { formOfUse, RUN_OF_ORDER } from './startUse.ts';

/** Longest text of an amount. */
const LONGEST_AMOUNT = 40;

/**
 * Page call: writes what a run used and what was scrapped into *Stock moves*. What stands there for the run already is not
 * written again: a double click, a retry or a second person changes nothing, and a correction is a row typed by hand.
 * @param payload `{ order, run, amounts?, scrapped? }`, amounts as typed by the key of a line, as planned where left out
 */
export function postUse(payload: unknown): UsePosted | Refused {
  const { amounts, scrapped, ...rest } = Object(payload) as Readonly<Record<string, unknown>>; // any value makes an object
  const asked = readPayload<Omit<UsePayload, 'amounts' | 'scrapped'>>(RUN_OF_ORDER, rest);
  const used = readAmounts(amounts);
  const lost = readAmounts(scrapped);
  if (asked.kind === 'refused') return asked;
  if (used.kind === 'refused') return used;
  if (lost.kind === 'refused') return lost;
  return withDocumentLock(() => postOnce(asked.value, { used: used.value, scrapped: lost.value }));
}

/** Any material may be named; whether the run takes it is told from the book. */
function readAmounts(sent: unknown) {
  const names = Object.keys(Object(sent) as object); // any value makes an object
  const fields = Object.fromEntries(
    names.map((name) => [name, { longest: LONGEST_AMOUNT, needed: false }]),
  );
  return readPayload<Readonly<Record<string, string>>>(fields, sent);
}

/** Everything is read anew inside the lock: somebody may just have posted the same run. */
function postOnce(asked: UsePayload, typed: TypedAmounts): UsePosted | Refused {
  const book = readBookNow(MONEY_TABLES);
  const before = ledger(book.stockMoves, book.materials);
  const form = formOfUse(book, before, asked);
  if (form.kind === 'refused') return form;
  const made = recordsOfUse({ ...form, kind: 'use' }, typed, today());
  if (made.kind === 'refused') return made;
  const { records } = made;
  if (records.length === 0)
    return { kind: 'ok', posted: 'before', rows: [], use: form, negative: [] };
  const appended = appendRows(STOCK_MOVES, records, book.shop.units);
  if (appended.kind === 'refused') return appended;
  const written: readonly MoveRow[] = records.map((record, index) => ({
    row: appended.row + index,
    record,
  }));
  const after = ledger([...book.stockMoves, ...written], book.materials);
  const use = formOfUse(book, after, asked);
  if (use.kind === 'refused') return use;
  const rows = written.map(({ row }) => row);
  const negative = after.problems
    .filter(({ sheet, row }) => sheet === STOCK_MOVES.sheet && rows.includes(row ?? 0))
    .map(({ row, text }) => `row ${row}: ${text}`);
  return { kind: 'ok', posted: 'now', rows, use, negative };
}
