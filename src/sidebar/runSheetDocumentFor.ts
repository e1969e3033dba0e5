import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { DocumentAnswer, RunPayload } from '../../shared/commands/commands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { runSheetDocument } from '../../shared/paper/runSheet/runSheetDocument.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { runDate } from '../runSheet/runDate.ts';
import { isRefused } from './orderInBook.ts';
import { planFor } from './planFor.ts';
import { RUN_FIELDS } from './printRunSheet.ts';
import { readPayload } from './readPayload.ts';

/**
 * Page call: the run sheet of an order as the dialog draws it.
 * @param payload `{ order, runId, firstPour? }`
 */
export function runSheetDocumentFor(payload: unknown): DocumentAnswer | Refused {
  const read = readPayload<RunPayload>(RUN_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const plan = planFor(readBookNow(PLAN_TABLES), read.value);
  if (isRefused(plan)) return plan;
  const run = { runId: read.value.runId, date: runDate(plan) };
  return { kind: 'ok', document: runSheetDocument(plan, run) };
}
