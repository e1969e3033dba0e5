import {
  CHECKLIST,
  CHECKLIST_COLUMNS,
  CHECKLIST_KEYS,
  type ChecklistKey,
} from '../../shared/day/checklist/checklistColumns.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { sizeGrid } from '../book/ensureSheet.ts';
import { readHeadings } from '../book/readHeadings.ts';
import { readMark, writeMark } from '../book/sheetMark.ts';
import { styleHeadings } from '../book/styleHeadings.ts';
import { findSheet, workbook } from '../platform/workbook.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** The mark that tells the add-on's own sheet from one that somebody made. */
const MARK = 'checklist';

/** The checklist's sheet, and which column of it is which, from 1. */
export interface ChecklistSheet {
  readonly kind: 'sheet';
  readonly sheet: Sheet;
  readonly columns: Readonly<Record<ChecklistKey, number>>;
}

/** The sheet as it is; undefined where none was made yet, refused where somebody took a column out. */
export function findChecklist(): ChecklistSheet | Refused | undefined {
  const sheet = findSheet(CHECKLIST);
  if (sheet === null || readMark(sheet).table !== MARK) return undefined;
  const { shown } = readHeadings(sheet);
  const columns = {} as Record<ChecklistKey, number>; // filled below, key by key
  for (const key of CHECKLIST_KEYS) {
    const { heading } = CHECKLIST_COLUMNS[key];
    const index = shown.indexOf(heading);
    if (index < 0)
      return refuse(
        '',
        `The sheet ${CHECKLIST} has lost its column ${heading}: put the heading back in its first row, or give the sheet another name.`,
      );
    columns[key] = index + 1;
  }
  return { kind: 'sheet', sheet, columns };
}

/** The sheet, made where there is none. A sheet of that name that the add-on did not make is left alone. */
export function ensureChecklist(): ChecklistSheet | Refused {
  const found = findChecklist();
  if (found !== undefined) return found;
  const named = findSheet(CHECKLIST);
  if (named !== null && named.getLastRow() > 0)
    return refuse(
      '',
      `The sheet ${CHECKLIST} was not made by this add-on and would be overwritten: give it another name first.`,
    );
  const sheet = named ?? workbook().insertSheet(CHECKLIST, 0);
  sizeGrid(sheet, 2, CHECKLIST_KEYS.length);
  writeMark(sheet, MARK, 1);
  const headings = sheet.getRange(1, 1, 1, CHECKLIST_KEYS.length);
  headings.setValues([CHECKLIST_KEYS.map((key) => CHECKLIST_COLUMNS[key].heading)]);
  styleHeadings(headings);
  CHECKLIST_KEYS.forEach((key, index) => {
    sheet.setColumnWidth(index + 1, CHECKLIST_COLUMNS[key].width);
  });
  sheet.setFrozenRows(1);
  const columns = {} as Record<ChecklistKey, number>; // every key is set on the next line
  for (const [index, key] of CHECKLIST_KEYS.entries()) columns[key] = index + 1;
  return { kind: 'sheet', sheet, columns };
}
