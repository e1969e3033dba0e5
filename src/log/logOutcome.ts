import type { Book } from '../../shared/book/book.ts';
import { PLAN_TABLES } from '../../shared/book/book.ts';
import { indexBook } from '../../shared/book/bookIndex.ts';
import { POUR_LOG } from '../../shared/book/tables/pourLog.ts';
import type { PourLogRecord } from '../../shared/book/tables.ts';
import type { OutcomeLogged, OutcomePayload } from '../../shared/commands/logCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { checkOutcome } from '../../shared/log/checkOutcome.ts';
import { rowToCorrect } from '../../shared/log/correction.ts';
import { FORM_KEYS } from '../../shared/log/formFields.ts';
import { goodSoFar } from '../../shared/log/goodSoFar.ts';
import { type OrderToLog, orderToLog } from '../../shared/log/orderToLog.ts';
import { piecesChanges } from '../../shared/log/piecesChanges.ts';
import { nextRound, runOfAnother } from '../../shared/log/runIds.ts';
import { statusAfterLogging } from '../../shared/log/statusAfter.ts';
import { isBad } from '../../shared/outcomes/causes/badRounds.ts';
import { roundCauses } from '../../shared/outcomes/causes/roundCauses.ts';
import { appendRows } from '../book/appendRows.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { workbook } from '../platform/workbook.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT, readPayload } from '../sidebar/readPayload.ts';
import { writeStatus } from './writeStatus.ts';

/** Longest text that a page may send for one field; the form's own limits are shorter. */
const LONGEST_TEXT = 2000;

/**
 * Page call: writes one row of the log for what came out, or for what corrects a row. The same token again writes nothing: a
 * double click or a retry logs once, while two people who log the same run both keep their rows. A row is corrected once; of
 * two people who correct it the second is told.
 * @param payload `{ order, token, corrects, values }`, values as typed, by the keys of the log's columns; corrects is the
 * entry of the row that this one replaces, absent for a new round
 */
export function logOutcome(payload: unknown): OutcomeLogged | Refused {
  const { values: sent, ...rest } = Object(payload) as Readonly<Record<string, unknown>>; // any value makes an object
  const entry = readPayload<Omit<OutcomePayload, 'values'>>(ENTRY_FIELDS, rest);
  const values = readPayload<OutcomePayload['values']>(valueFields(), sent);
  if (entry.kind === 'refused') return entry;
  if (values.kind === 'refused') return values;
  return withDocumentLock(() => logOnce({ ...entry.value, values: values.value }));
}

const ENTRY_FIELDS = { order: NEEDED_TEXT, token: NEEDED_TEXT, corrects: OPTIONAL_TEXT } as const;

function valueFields() {
  const field = { longest: LONGEST_TEXT, needed: false };
  return Object.fromEntries(FORM_KEYS.map((key) => [key, field]));
}

/** Everything is read anew inside the lock: rows move, and the same entry may just have been written. */
function logOnce({ order, token, corrects, values }: OutcomePayload): OutcomeLogged | Refused {
  const before = readBookNow(PLAN_TABLES);
  const same = before.pourLog.find(({ record }) => record.entry === token);
  const old = corrects && !same ? rowToCorrect(before, corrects, order) : undefined;
  if (old?.kind === 'refused') return old;
  const found = orderToLog(before, order, old?.record);
  if (found.kind === 'refused') return found;
  if (same) return answer(before, found, same, 'before');
  const checked = checkOutcome(values, {
    system: before.shop.units,
    layers: found.layers.length,
  });
  if (checked.kind === 'refused') return checked;
  const stray = runOfAnother(before, checked.record.run ?? '', found.order);
  if (stray) return { kind: 'refused', problems: [stray] };
  const { run = '', round = old?.record.round ?? nextRound(before, found.order, run) } =
    checked.record;
  const record = {
    ...checked.record,
    ...context(found),
    round,
    entry: token,
    loggedAt: now(),
    ...(old?.record.entry === undefined ? {} : { corrects: old.record.entry }),
  };
  const appended = appendRows(POUR_LOG, [record], before.shop.units);
  if (appended.kind === 'refused') return appended;
  const entry = { row: appended.row, record };
  const after: Book = { ...before, pourLog: [...before.pourLog, entry] };
  const logged = answer(after, found, entry, 'now');
  const replaces = old === undefined ? {} : { replaces: old.row };
  const causes = isBad(record) ? { causes: roundCauses(indexBook(after), entry) } : {};
  return { ...logged, ...replaces, ...causes, changes: piecesChanges(before, after, found.order) };
}

function context({ order, mold, pattern, version }: OrderToLog): PourLogRecord {
  return { order, mold, pattern, version };
}

/** Says where the entry stands and moves the order on when it is complete, now or by an entry whose answer was lost. */
function answer(
  book: Book,
  { order, quantity, row }: OrderToLog,
  entry: { readonly row: number; readonly record: PourLogRecord },
  logged: OutcomeLogged['logged'],
): OutcomeLogged {
  const good = goodSoFar(book, order);
  const status = statusAfterLogging(row.record.status, good, quantity);
  if (status !== undefined && status !== row.record.status) writeStatus(row.row, status);
  return {
    kind: 'ok',
    logged,
    row: entry.row,
    run: entry.record.run ?? '',
    order,
    quantity,
    good,
    status: status ?? '',
    changes: [],
  };
}

function now(): string {
  const zone = workbook().getSpreadsheetTimeZone();
  return Utilities.formatDate(new Date(), zone, 'yyyy-MM-dd HH:mm');
}
