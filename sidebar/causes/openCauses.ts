import type { CausesPayload } from '../../shared/commands/causeCommands.ts';
import type { CausesSummary } from '../../shared/outcomes/causes/causesSummary.ts';
import { type Store, shown } from '../panel/store.ts';
import { done, work } from '../panel/work.ts';

/** Shows what went wrong in a round; the last bad one where none is named. */
export async function openCauses(store: Store, asked: CausesPayload = {}): Promise<void> {
  const causes = await work(store, 'Looking at the round…', 'causesFor', asked);
  if (causes === undefined) return;
  store.set({ view: { kind: 'causes', causes }, notice: done(readText(causes)) });
}

function readText({ shown, insteadOf }: CausesSummary): string {
  if (shown === undefined) return 'Pour log read: no round came out bad.';
  return insteadOf === undefined
    ? `${shown.label} read.`
    : `Row ${insteadOf} was corrected: row ${shown.row} stands for it.`;
}

/** Opens what is on show as a page to print. */
export async function printCauses(store: Store): Promise<void> {
  const row = shown(store, 'causes')?.causes.shown?.row;
  if (row === undefined) return;
  const opened = await work(store, 'Opening the page…', 'showCauses', { row: String(row) });
  if (opened === undefined) return;
  store.set({ notice: done('The page of the causes is open.') });
}
