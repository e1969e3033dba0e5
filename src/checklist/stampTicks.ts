import { safeText } from '../platform/safeText.ts';
import type { ChecklistSheet } from './checklistSheet.ts';

/**
 * Writes the time of now beside every tick that has none, and takes it away where the edit took the tick; one cell at a time, so that
 * what others tick meanwhile stays. Call it inside the document lock.
 * @param edited lines whose box was edited, from 0; undefined where something else was
 * @param who - asked and written beside a fresh tick if it is the only one; of several nobody knows whose each is
 */
export function stampTicks(
  { sheet, columns }: ChecklistSheet,
  {
    edited,
    who,
  }: {
    readonly edited: { readonly first: number; readonly last: number } | undefined;
    readonly who: () => string;
  },
): void {
  const rows = sheet.getLastRow() - 1;
  if (rows < 1) return;
  const values = sheet.getRange(2, 1, rows, sheet.getLastColumn()).getValues();
  const cell = (line: number, key: keyof typeof columns): unknown =>
    values[line]?.[columns[key] - 1] ?? '';
  const lines = values.map((_, line) => line);
  const fresh = lines.filter((line) => cell(line, 'done') === true && cell(line, 'at') === '');
  const touched = edited ? lines.slice(Math.max(0, edited.first), edited.last + 1) : [];
  const gone = touched.filter((line) => cell(line, 'done') === false && cell(line, 'at') !== '');
  for (const line of fresh) sheet.getRange(2 + line, columns.at).setValue(new Date());
  const [only] = fresh;
  const name = only !== undefined && fresh.length === 1 && cell(only, 'who') === '' ? who() : '';
  if (only !== undefined && name !== '')
    sheet.getRange(2 + only, columns.who).setValue(safeText(name));
  for (const line of gone) {
    sheet.getRange(2 + line, columns.at).clearContent();
    sheet.getRange(2 + line, columns.who).clearContent();
  }
}
