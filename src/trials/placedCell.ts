import { problemsAt } from '../../shared/book/bookIndex.ts';
import type { Column } from '../../shared/book/column.ts';
import { findColumns } from '../../shared/book/reading/findColumns.ts';
import { unitFrom } from '../../shared/book/settings/readShop.ts';
import type { Setting } from '../../shared/book/settings/setting.ts';
import { SETTINGS } from '../../shared/book/settings/settings.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { describeIn } from '../../shared/errors/describeIn.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import type { FigureCell } from '../../shared/trials/figureCells.ts';
import type { TrialBook } from '../../shared/trials/trialBook.ts';
import type { UnitName } from '../../shared/units/units.ts';
import { readHeadings } from '../book/readHeadings.ts';
import { findSheet, readCells } from '../platform/workbook.ts';

/** The cell of a figure on its sheet, and the unit it is written in. */
export interface PlacedCell {
  readonly kind: 'placed';
  readonly range: GoogleAppsScript.Spreadsheet.Range;
  readonly unit: UnitName | undefined;
}

/** Finds a figure's cell, or says what keeps it from being written: no such column, or something in it that is no number. */
export function placedCell(book: TrialBook, cell: FigureCell): PlacedCell | Refused {
  const { home, row } = cell;
  if (home.sheet === 'shop') return shopCell(book, SETTINGS[home.key]);
  const table = TABLES[home.sheet];
  const sheet = findSheet(table.sheet);
  const columns: Readonly<Record<string, Column>> = table.columns;
  const heading = columns[home.key]?.heading ?? home.key;
  const found = sheet && findColumns(table, readHeadings(sheet).shown);
  const place = found?.places.find(({ key }) => key === home.key);
  if (!sheet || !place || row === undefined)
    return refuse(
      '',
      `${table.sheet} lacks a readable column for ${heading}: choose Poursmith > Set up this workbook.`,
    );
  const wrong = problemsAt(book.index, table.sheet, row).find((one) => one.heading === heading);
  if (wrong)
    return refuse(
      '',
      `In ${table.sheet}, row ${row}: ${describeIn(wrong.error, book.index.book.shop.units)}.`,
    );
  return { kind: 'placed', range: sheet.getRange(row, place.index + 1), unit: place.unit };
}

function shopCell(book: TrialBook, setting: Setting): PlacedCell | Refused {
  const cells = readCells('Shop');
  const index = cells.findIndex(
    ([label]) => String(label).trim().toLowerCase() === setting.label.toLowerCase(),
  );
  const sheet = findSheet('Shop');
  if (sheet === null || index < 0)
    return refuse(
      '',
      `Shop lacks a row for ${setting.label}: choose Poursmith > Set up this workbook.`,
    );
  const wrong = book.index.book.problems.find(
    (one) => one.sheet === 'Shop' && one.heading === setting.label,
  );
  if (wrong) return refuse('', `In Shop, row ${index + 1}: ${describeIn(wrong.error, 'metric')}.`);
  const unit = unitFrom(setting, String(cells[index]?.[2] ?? '').trim());
  return { kind: 'placed', range: sheet.getRange(index + 1, 2), unit };
}
