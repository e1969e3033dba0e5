import { type Book, PLAN_TABLES } from '../../book/book.ts';
import { indexBook } from '../../book/bookIndex.ts';
import type { PourLogRecord } from '../../book/tables.ts';
import type { Refused } from '../../errors/refuse.ts';
import { checkOutcome } from '../../log/checkOutcome.ts';
import { FORM_KEYS } from '../../log/formColumn.ts';
import { goodSoFar } from '../../log/goodSoFar.ts';
import { type OrderToLog, orderToLog } from '../../log/orderToLog.ts';
import { piecesChanges } from '../../log/piecesChanges.ts';
import { rowToCorrect } from '../../log/rowToCorrect.ts';
import { nextRound, runOfAnother } from '../../log/runChoices.ts';
import { statusAfterLogging } from '../../log/statusAfterLogging.ts';
import { isBad } from '../../outcomes/causes/badRounds.ts';
import { roundCauses } from '../../outcomes/causes/roundCauses.ts';
import { type Context, type Decision, isRefused, writeCommand } from '../command.ts';
import type { OutcomeLogged, OutcomePayload } from '../logCommands.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT } from '../readPayload.ts';
import type { Write } from '../write.ts';

/** A text of the form; its own limits are shorter. */
const TYPED = { longest: 2000, needed: false };

/**
 * One row of the log for what came out, or for what corrects a row. The same token again writes nothing: a double click or a retry
 * logs once, while two people who log the same run both keep their rows. A row is corrected once; of two people who correct it the
 * second is told.
 */
export const logOutcome = writeCommand<'logOutcome', (typeof PLAN_TABLES)[number]>({
  payload: {
    order: NEEDED_TEXT,
    token: NEEDED_TEXT,
    corrects: OPTIONAL_TEXT,
    values: { texts: Object.fromEntries(FORM_KEYS.map((key) => [key, TYPED])) },
  },
  tables: PLAN_TABLES,
  decide: logged,
});

function logged(
  { order, token, corrects, values }: OutcomePayload,
  before: Book,
  context: Context,
): Decision<OutcomeLogged> | Refused {
  const same = before.pourLog.find(({ record }) => record.entry === token);
  const old = corrects && !same ? rowToCorrect(before, corrects, order) : undefined;
  if (old && isRefused(old)) return old;
  const found = orderToLog(before, order, old?.record);
  if (isRefused(found)) return found;
  if (same) return standing(before, found, same, 'before');
  const checked = checkOutcome(values, {
    system: before.shop.units,
    layers: found.layers.length,
  });
  if (isRefused(checked)) return checked;
  const stray = runOfAnother(before, checked.record.run ?? '', found.order);
  if (stray) return { kind: 'refused', problems: [stray] };
  const { run = '', round = old?.record.round ?? nextRound(before, found.order, run) } =
    checked.record;
  const record = {
    ...checked.record,
    ...ofOrder(found),
    round,
    entry: token,
    loggedAt: context.minute(),
    ...(old?.record.entry === undefined ? {} : { corrects: old.record.entry }),
  };
  const entry = { row: context.cells('pourLog').length + 1, record };
  const after: Book = { ...before, pourLog: [...before.pourLog, entry] };
  const { answer, writes } = standing(after, found, entry, 'now');
  const replaces = old === undefined ? {} : { replaces: old.row };
  const causes = isBad(record) ? { causes: roundCauses(indexBook(after), entry) } : {};
  return {
    kind: 'decided',
    answer: {
      ...answer,
      ...replaces,
      ...causes,
      changes: piecesChanges(before, after, found.order),
    },
    writes: [{ kind: 'append', table: 'pourLog', records: [record] }, ...writes],
  };
}

function ofOrder({ order, mold, pattern, version }: OrderToLog): PourLogRecord {
  return { order, mold, pattern, version };
}

/** Where the entry stands; the order is moved on when it is complete, now or by an entry whose answer was lost. */
function standing(
  book: Book,
  { order, quantity, row }: OrderToLog,
  entry: { readonly row: number; readonly record: PourLogRecord },
  when: OutcomeLogged['logged'],
): Required<Pick<Decision<OutcomeLogged>, 'kind' | 'answer' | 'writes'>> {
  const good = goodSoFar(book, order);
  const status = statusAfterLogging(row.record.status, good, quantity);
  const writes: readonly Write[] =
    status === row.record.status
      ? []
      : [{ kind: 'change', table: 'orders', row: row.row, cells: { status } }];
  return {
    kind: 'decided',
    answer: {
      kind: 'ok',
      logged: when,
      row: entry.row,
      run: entry.record.run ?? '',
      order,
      quantity,
      good,
      status: status ?? '',
      changes: [],
    },
    writes,
  };
}
