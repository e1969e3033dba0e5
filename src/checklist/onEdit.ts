import { CHECKLIST } from '../../shared/day/checklist/checklistColumns.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
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
  withDocumentLock(() => stampTicks(found, { edited, who: emailOf(event) }));
}

/** "" where the platform does not tell: outside one's own organization it never does. */
function emailOf(event: Edited | undefined): string {
  return event?.user?.getEmail() ?? '';
}
