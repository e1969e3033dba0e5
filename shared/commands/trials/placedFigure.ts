import { problemsAt } from '../../book/bookIndex.ts';
import type { Column, Table } from '../../book/column.ts';
import { findColumns } from '../../book/reading/findColumns.ts';
import { unitFrom } from '../../book/settings/readShop.ts';
import type { Setting } from '../../book/settings/setting.ts';
import { SETTINGS } from '../../book/settings/settings.ts';
import { TABLES } from '../../book/tables.ts';
import { describeIn } from '../../errors/describeIn.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import type { FigureCell } from '../../trials/figureCell.ts';
import type { TrialBook } from '../../trials/trialBook.ts';
import type { UnitName } from '../../units/units.ts';
import type { Context } from '../command.ts';

/** The cell of a figure on its sheet, and the unit it is written in. */
export interface PlacedFigure {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly unit: UnitName | undefined;
}

type Cells = Context['cells'];

/** Finds a figure's cell, or says what keeps it from being written: no such column, or something in it that is no number. */
export function placedFigure(
  book: TrialBook,
  cell: FigureCell,
  cells: Cells,
): PlacedFigure | Refused {
  const { home, row } = cell;
  if (home.sheet === 'shop') return inShop(book, SETTINGS[home.key], cells);
  const table: Table = TABLES[home.sheet];
  const columns: Readonly<Record<string, Column>> = table.columns;
  const heading = columns[home.key]?.heading ?? home.key;
  const found = findColumns(table, cells(home.sheet)[0] ?? []);
  const place = found.places.find(({ key }) => key === home.key);
  if (!place || row === undefined)
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
  return { sheet: table.sheet, row, column: place.index + 1, unit: place.unit };
}

function inShop(book: TrialBook, setting: Setting, cells: Cells): PlacedFigure | Refused {
  const rows = cells('shop');
  const index = rows.findIndex(
    ([label]) => String(label).trim().toLowerCase() === setting.label.toLowerCase(),
  );
  if (index < 0)
    return refuse(
      '',
      `Shop lacks a row for ${setting.label}: choose Poursmith > Set up this workbook.`,
    );
  const wrong = book.index.book.problems.find(
    (one) => one.sheet === 'Shop' && one.heading === setting.label,
  );
  if (wrong) return refuse('', `In Shop, row ${index + 1}: ${describeIn(wrong.error, 'metric')}.`);
  const unit = unitFrom(setting, String(rows[index]?.[2] ?? '').trim());
  return { sheet: 'Shop', row: index + 1, column: 2, unit };
}
