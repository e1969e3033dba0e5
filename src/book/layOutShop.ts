import type { BookNotes } from '../../shared/book/layout/bookNotes.ts';
import { COMPUTED_COLOR, LAYOUT_VERSION } from '../../shared/book/layout/layoutVersion.ts';
import { settingFormat } from '../../shared/book/layout/numberFormat.ts';
import type { SetUpChange } from '../../shared/book/layout/setUpReport.ts';
import { readShop } from '../../shared/book/settings/readShop.ts';
import {
  missingSettings,
  type SettingRow,
  settingRows,
} from '../../shared/book/settings/settingRows.ts';
import {
  SETTINGS,
  SHOP_FIGURES,
  SHOP_HEADINGS,
  type ShopFigureKey,
} from '../../shared/book/settings/settings.ts';
import { moneyUnitFormula, shopFormula } from '../../shared/book/settings/shopFormula.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { safeText } from '../platform/safeText.ts';
import { readCells } from '../platform/workbook.ts';
import { ensureSheet, sizeGrid } from './ensureSheet.ts';
import { protectWithWarning } from './protectWithWarning.ts';
import { readMark, writeMark } from './sheetMark.ts';
import { styleHeadings } from './styleHeadings.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Widths of Setting, Value, Unit, About [px]. */
const WIDTHS = [190, 130, 70, 560] as const;

/** The sheet *Shop*: one row for each setting; rows that are there stay as they are, missing ones come at the end. */
export function layOutShop(
  changes: SetUpChange[],
  notes: BookNotes,
): {
  readonly sheet: Sheet;
  readonly system: UnitSystem;
} {
  const { sheet, isNew } = ensureSheet({ name: 'Shop', table: 'shop' }, changes);
  if (isNew) startShop(sheet);
  const cells = readCells('Shop');
  const { units } = readShop(cells).shop;
  const missing = missingSettings(cells, settingRows(units, notes.settings));
  if (missing.length > 0) addSettings(sheet, missing);
  fillFigures(sheet, missing, units);
  if (!isNew)
    for (const { setting } of missing) changes.push({ kind: 'setting', label: setting.label });
  const isOld = readMark(sheet).layout < LAYOUT_VERSION;
  if (isOld) dressShop(sheet);
  const headings = sheet.getRange(1, 1, 1, SHOP_HEADINGS.length);
  const isProtected = protectWithWarning(sheet, headings, 'Poursmith: headings of Shop');
  if (!isNew && (isOld || isProtected)) changes.push({ kind: 'layout', sheet: 'Shop' });
  return { sheet, system: units };
}

function startShop(sheet: Sheet): void {
  const rows = Object.keys(SETTINGS).length + Object.keys(SHOP_FIGURES).length;
  sizeGrid(sheet, 1 + rows, SHOP_HEADINGS.length);
  sheet.getRange(1, 1, 1, SHOP_HEADINGS.length).setValues([[...SHOP_HEADINGS]]);
}

function addSettings(sheet: Sheet, rows: readonly SettingRow[]): void {
  const first = sheet.getLastRow() + 1;
  const lacking = first + rows.length - 1 - sheet.getMaxRows();
  if (lacking > 0) sheet.insertRowsAfter(sheet.getMaxRows(), lacking);
  const range = sheet.getRange(first, 1, rows.length, SHOP_HEADINGS.length);
  range.clearDataValidations();
  range.setNumberFormats(
    // A formula in a cell of text would be shown and not computed.
    rows.map(({ setting: { kind }, setting }) => [
      '@',
      settingFormat(setting),
      kind === 'money' ? 'General' : '@',
      '@',
    ]),
  );
  range.setValues(
    rows.map(({ cells }) =>
      cells.map((cell) => (typeof cell === 'string' ? safeText(cell) : cell)),
    ),
  );
  range.setVerticalAlignment('middle');
  sheet.getRange(first, SHOP_HEADINGS.length, rows.length, 1).setWrap(true);
  rows.forEach(({ setting }, index) => {
    if (setting.kind === 'choice')
      sheet.getRange(first + index, 2).setDataValidation(choiceRule(setting.choices));
  });
}

/** Formulas into the rows just added that fill themselves. */
function fillFigures(sheet: Sheet, added: readonly SettingRow[], system: UnitSystem): void {
  const figures = Object.keys(SHOP_FIGURES) as ShopFigureKey[]; // keys of the one table of figures
  const wanted = figures.filter((figure) => added.some(({ key }) => key === figure));
  const prices = added.flatMap(({ setting }) => (setting.kind === 'money' ? [setting] : []));
  if (wanted.length + prices.length === 0) return;
  const labels = readCells('Shop').map(([label]) => String(label).trim().toLowerCase());
  const rowOf = (label: string) => 1 + labels.indexOf(label.toLowerCase());
  for (const figure of wanted) {
    const cell = sheet.getRange(rowOf(SHOP_FIGURES[figure].label), 2);
    cell.setBackground(COMPUTED_COLOR).setFormula(shopFormula(figure, system, rowOf));
  }
  for (const price of prices)
    sheet.getRange(rowOf(price.label), 3).setFormula(moneyUnitFormula(price, rowOf));
}

function choiceRule(choices: readonly string[]): GoogleAppsScript.Spreadsheet.DataValidation {
  return SpreadsheetApp.newDataValidation()
    .requireValueInList([...choices], true)
    .setAllowInvalid(false)
    .setHelpText(`One of: ${choices.join(', ')}.`)
    .build();
}

function dressShop(sheet: Sheet): void {
  styleHeadings(sheet.getRange(1, 1, 1, SHOP_HEADINGS.length));
  sheet.setFrozenRows(1);
  WIDTHS.forEach((width, index) => {
    sheet.setColumnWidth(index + 1, width);
  });
  writeMark(sheet, 'shop', LAYOUT_VERSION);
}
