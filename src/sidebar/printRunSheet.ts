import type { Refused, RunPayload, RunSheetShown } from '../../shared/verbs/verbs.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { isRefused } from './orderInBook.ts';
import { planFor } from './planFor.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT, readPayload } from './readPayload.ts';

/** Fits a laptop's screen [px]. */
const WIDTH = 860;
const HEIGHT = 640;

/**
 * Page call: opens the dialog that shows and prints a run sheet.
 * @param payload `{ order, runId, firstPour? }`
 */
export function printRunSheet(payload: unknown): RunSheetShown | Refused {
  const read = readPayload<RunPayload>(RUN_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const plan = planFor(readBookNow(), read.value);
  if (isRefused(plan)) return plan;
  const page = HtmlService.createHtmlOutputFromFile('RunSheet')
    .append(requestElement(read.value))
    .setWidth(WIDTH)
    .setHeight(HEIGHT);
  SpreadsheetApp.getUi().showModalDialog(page, `Run sheet ${read.value.runId}`);
  return { kind: 'ok', runId: read.value.runId };
}

/** What names a run sheet in a page's call. */
export const RUN_FIELDS = {
  order: NEEDED_TEXT,
  runId: NEEDED_TEXT,
  firstPour: OPTIONAL_TEXT,
} as const;

/** Tells the dialog which run it is for. Per-cent encoded, the text holds no character that means anything in HTML. */
function requestElement(payload: RunPayload): string {
  return `<div id="request" hidden data-request="${encodeURIComponent(JSON.stringify(payload))}"></div>`;
}
