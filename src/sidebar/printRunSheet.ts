import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { RunPayload, RunSheetShown } from '../../shared/commands/commands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { isRefused } from './orderInBook.ts';
import { planFor } from './planFor.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT, readPayload } from './readPayload.ts';
import { requestDialog } from './requestDialog.ts';

/**
 * Page call: opens the dialog that shows and prints a run sheet.
 * @param payload `{ order, runId, firstPour? }`
 */
export function printRunSheet(payload: unknown): RunSheetShown | Refused {
  const read = readPayload<RunPayload>(RUN_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const plan = planFor(readBookNow(PLAN_TABLES), read.value);
  if (isRefused(plan)) return plan;
  requestDialog('RunSheet', `Run sheet ${read.value.runId}`, read.value);
  return { kind: 'ok', runId: read.value.runId };
}

/** What names a run sheet in a page's call. */
export const RUN_FIELDS = {
  order: NEEDED_TEXT,
  runId: NEEDED_TEXT,
  firstPour: OPTIONAL_TEXT,
} as const;
