import type { LogForm } from '../../shared/commands/logCommands.ts';
import type { LoggedEntry } from '../../shared/log/rowToCorrect.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { button, el } from '../page/el.ts';
import { folded } from '../page/folded.ts';
import { labeled } from '../page/labeled.ts';
import type { Store } from '../panel/store.ts';
import { openCorrection } from './openLog.ts';

/** Takes one of the order's last entries back into the form. */
export function correctionCard({ entries }: LogForm, store: Store): HTMLElement {
  if (entries.length === 0) return el('div');
  const options = entries.map((one) => el('option', { value: one.entry }, loggedEntryText(one)));
  const select = el('select', { id: 'entry', name: 'entry' }, ...options);
  const open = button(
    { id: 'correct', label: 'Correct this entry' },
    () => void openCorrection(store, select.value),
  );
  return folded('Correct an entry', labeled('Entry, the last first', select), open);
}

/** An entry in a line: `row 58, R-1006 round 6, 2026-11-24 12:54, CM: 14 of 16 pieces good`. */
export function loggedEntryText({
  row,
  run,
  round,
  loggedAt,
  who,
  good,
  poured,
}: LoggedEntry): string {
  const where = round === undefined ? run : `${run} round ${round}`;
  const by = [`Row ${row}`, where, loggedAt, who].filter((part) => part !== '').join(', ');
  return `${by}: ${good} of ${countText(poured, 'piece')} good`;
}
