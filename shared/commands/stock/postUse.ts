import { MONEY_TABLES } from '../../book/book.ts';
import { STOCK_MOVES } from '../../book/tables/stockMoves.ts';
import { ledger } from '../../money/stock/ledger.ts';
import type { MoveRow } from '../../money/stock/ledgerTypes.ts';
import { recordsOfUse } from '../../money/stock/recordsOfUse.ts';
import { decided, isRefused, writeCommand } from '../command.ts';
import { formOfUse, RUN_OF_ORDER } from './startUse.ts';

/** An amount as typed; any material may be named, whether the run takes it is told from the book. */
const AMOUNTS = { any: { longest: 40, needed: false } };

/**
 * Writes what a run used and what was scrapped into *Stock moves*. What stands there for the run already is not written again: a
 * double click, a retry or a second person changes nothing, and a correction is a row typed by hand.
 */
export const postUse = writeCommand<'postUse', (typeof MONEY_TABLES)[number]>({
  payload: { ...RUN_OF_ORDER, amounts: AMOUNTS, scrapped: AMOUNTS },
  tables: MONEY_TABLES,
  decide: ({ amounts: used = {}, scrapped = {}, ...asked }, book, context) => {
    const form = formOfUse(book, ledger(book.stockMoves, book.materials), asked);
    if (isRefused(form)) return form;
    const made = recordsOfUse({ ...form, kind: 'use' }, { used, scrapped }, context.today());
    if (isRefused(made)) return made;
    const { records } = made;
    if (records.length === 0)
      return decided({ kind: 'ok', posted: 'before', rows: [], use: form, negative: [] });
    const first = context.cells('stockMoves').length + 1;
    const written: readonly MoveRow[] = records.map((record, index) => ({
      row: first + index,
      record,
    }));
    const after = ledger([...book.stockMoves, ...written], book.materials);
    const use = formOfUse(book, after, asked);
    if (isRefused(use)) return use;
    const rows = written.map(({ row }) => row);
    const negative = after.problems
      .filter(({ sheet, row }) => sheet === STOCK_MOVES.sheet && rows.includes(row ?? 0))
      .map(({ row, text }) => `row ${row}: ${text}`);
    return decided(
      { kind: 'ok', posted: 'now', rows, use, negative },
      { writes: [{ kind: 'append', table: 'stockMoves', records }] },
    );
  },
});
