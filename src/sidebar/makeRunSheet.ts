import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { OrderPayload, RunSheetMade } from '../../shared/commands/commands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { nextRunId } from '../../shared/log/runIds.ts';
import { statusAfterPlanning } from '../../shared/log/statusAfter.ts';
import { writeStatus } from '../log/writeStatus.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { findSheet, workbook } from '../platform/workbook.ts';
import { RUN_SHEET, writeRunSheetTab } from '../runSheet/writeRunSheetTab.ts';
import { isRefused, orderInBook } from './orderInBook.ts';
import { planFor } from './planFor.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT, readPayload } from './readPayload.ts';

/**
 * Page call: lays out the sheet *Run sheet* for an order, shows it, and moves the order on to planned.
 * @param payload `{ order, firstPour? }`
 */
export function makeRunSheet(payload: unknown): RunSheetMade | Refused {
  const read = readPayload<OrderPayload>({ order: NEEDED_TEXT, firstPour: OPTIONAL_TEXT }, payload);
  if (read.kind === 'refused') return read;
  const made = withDocumentLock(() => make(read.value));
  if (made.kind === 'ok') showRunSheet();
  return made;
}

function make(payload: OrderPayload): RunSheetMade | Refused {
  const book = readBookNow(PLAN_TABLES);
  const row = orderInBook(book, payload.order);
  const plan = planFor(book, payload);
  if (isRefused(plan)) return plan;
  if (isRefused(row)) return row;
  const runId = nextRunId(book, plan.order);
  writeRunSheetTab(plan, runId);
  const status = statusAfterPlanning(row.record.status);
  if (status !== undefined && status !== row.record.status) writeStatus(row.row, status);
  return { kind: 'ok', runId, status: status ?? '' };
}

function showRunSheet(): void {
  const sheet = findSheet(RUN_SHEET);
  if (sheet) workbook().setActiveSheet(sheet);
}
