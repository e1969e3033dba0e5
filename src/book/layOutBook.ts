import type { BookNotes } from '../../shared/book/layout/bookNotes.ts';
import { LAYOUT_VERSION } from '../../shared/book/layout/layoutVersion.ts';
import type { SetUpChange } from '../../shared/book/layout/setUpReport.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import { readDataPage } from '../platform/readDataPage.ts';
import { dressTable } from './dressTable.ts';
import { fillOrdersFormulas } from './fillOrdersFormulas.ts';
import { layOutShop } from './layOutShop.ts';
import { type LaidTable, layOutTable } from './layOutTable.ts';
import { protectWithWarning } from './protectWithWarning.ts';
import { readMark } from './sheetMark.ts';

/** Creates what the book lacks and brings older sheets up to date; call it under the document lock. */
export function layOutBook(): readonly SetUpChange[] {
  const changes: SetUpChange[] = [];
  const notes = readDataPage('BookNotes') as BookNotes; // the build wrote it
  const shop = layOutShop(changes, notes);
  const laid: LaidTable[] = [];
  let after = shop.sheet;
  for (const key of Object.keys(TABLES) as TableKey[]) {
    const one = layOutTable({ key, table: TABLES[key], after }, shop.system, changes);
    laid.push(one); // keys of the one list of tables
    after = one.sheet;
  }
  // Drop-downs and formulas name other sheets, so all of them must stand first.
  for (const one of laid) finish(one, notes, changes);
  fillOrdersFormulas(laid, changes);
  return changes;
}

function finish(laid: LaidTable, notes: BookNotes, changes: SetUpChange[]): void {
  const isOld = readMark(laid.sheet).layout < LAYOUT_VERSION;
  if (isOld) dressTable(laid, notes, 'all');
  else if (laid.added.length + laid.turned.length > 0) dressTable(laid, notes, 'written');
  const isProtected = protectTable(laid);
  const isUntold = !laid.isNew && laid.added.length + laid.turned.length === 0;
  if (isUntold && (isOld || isProtected)) changes.push({ kind: 'layout', sheet: laid.table.sheet });
}

/** @returns whether a protection was added or moved */
function protectTable({ sheet, table, computed }: LaidTable): boolean {
  const headings = sheet.getRange(1, 1, 1, sheet.getMaxColumns());
  const moved = protectWithWarning(sheet, headings, `Poursmith: headings of ${table.sheet}`);
  if (computed.length === 0) return moved;
  const numbers = computed.map(({ index }) => index + 1);
  const first = Math.min(...numbers);
  const cells = sheet.getRange(2, first, sheet.getMaxRows() - 1, Math.max(...numbers) - first + 1);
  const also = protectWithWarning(sheet, cells, `Poursmith: computed columns of ${table.sheet}`);
  return moved || also;
}
