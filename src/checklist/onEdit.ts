import { readTable } from '../../shared/book/reading/readTable.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { CHECKLIST } from '../../shared/day/checklist/checklistColumns.ts';
import { tickedBy } from '../../shared/day/checklist/tickedBy.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { readCells } from '../platform/workbook.ts';
import { findChecklist } from './checklistSheet.ts';
import { stampTicks } from './stampTicks.ts';

type Edited = Partial<GoogleAppsScript.Events.SheetsOnEdit>;

/**
 * Simple trigger: writes beside a fresh tick of the checklist when it was made and, where the platform tells it, by whom, and takes that away
 * with the tick. For fresh ticks it looks at every line and not at the one edited: the platform drops triggers that come too fast.
 */
export function onEdit(event: Edited | undefined): void {
  const range = event?.range;
  if (range?.getSheet().getName() !== CHECKLIST) return;
  const found = findChecklist();
  if (found?.kind !== 'sheet') return;
  const { done } = found.columns;
  const isTick = range.getColumn() <= done && range.getLastColumn() >= done;
  const edited = isTick ? { first: range.getRow() - 2, last: range.getLastRow() - 2 } : undefined;
  withDocumentLock(() => stampTicks(found, { edited, who: () => personOf(emailOf(event)) }));
}

/** "" where the platform does not tell: it knows the owner, seldom anybody else. */
function emailOf(event: Edited | undefined): string {
  try {
    return event?.user?.getEmail() ?? '';
  } catch {
    // The platform may refuse to tell: a tick then has its time and no name.
    return '';
  }
}

function personOf(email: string): string {
  if (email === '') return '';
  const { rows } = readTable(TABLES.people, readCells(TABLES.people.sheet));
  return tickedBy(
    email,
    rows.flatMap(({ record }) => record.person ?? []),
  );
}
