import type { Book } from '../../shared/book/book.ts';
import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { CausesAnswer, CausesPayload } from '../../shared/commands/causeCommands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { causesSummary } from '../../shared/outcomes/causes/causesSummary.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { workbook } from '../platform/workbook.ts';
import { readPayload } from '../sidebar/readPayload.ts';
import { CAUSE_FIELDS } from './causeFields.ts';

/**
 * Page call: the likely causes of what came out bad in one round, and the bad rounds of the log.
 * @param payload `{ row?, from? }`; without both the round of the current cell, else the last bad one
 */
export function causesFor(payload: unknown): CausesAnswer | Refused {
  const read = readPayload<CausesPayload>(CAUSE_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const { row: typed, from } = read.value;
  if (typed && !/^\d{1,7}$/.test(typed))
    return refuse('row', `row must be a whole number, got "${typed}"`);
  if (from && from !== 'selected')
    return refuse('from', `from must be one of selected, got "${from}"`);
  const book = readBookNow(PLAN_TABLES);
  const row = typed ? Number(typed) : from === 'selected' ? selectedRow() : selectedRound(book);
  if (typeof row === 'object') return row;
  const shown = causesSummary(book, row);
  if (shown === undefined)
    return refuse('', `Row ${row} of Pour log is blank: select a row that holds a round.`);
  return { kind: 'ok', ...shown };
}

/** The row of the current cell where it holds a round of the log. */
function selectedRound({ pourLog }: Book): number | undefined {
  const selected = selectedRow();
  return pourLog.find(({ row }) => row === selected)?.row;
}

/** The row of the current cell, or in plain words what to select. */
function selectedRow(): number | Refused {
  if (workbook().getActiveSheet().getName() !== 'Pour log')
    return refuse('', 'Select a row on the sheet Pour log first.');
  const row = workbook().getCurrentCell()?.getRow() ?? 1;
  return row === 1
    ? refuse('', 'The heading row is selected: select a row that holds a round.')
    : row;
}
