import { type BookCells, readBook, TRIAL_TABLES } from '../../shared/book/book.ts';
import { headingOf } from '../../shared/book/reading/headingOf.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { settingRows } from '../../shared/book/settings/settingRows.ts';
import { SHOP_HEADINGS, type Shop } from '../../shared/book/settings/settings.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { type TrialBook, trialBook } from '../../shared/trials/trialBook.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';

type Rows = readonly Readonly<Record<string, CellValue>>[];

export type TrialRows = { readonly [Key in (typeof TRIAL_TABLES)[number]]?: Rows };

/** A plate, a mold and materials to try things on; metric. */
export const BENCH: TrialRows = {
  plates: [
    { plate: 'Griddle', kind: 'thin griddle', highestSetting: 204, warmUp: 9, watts: 1500 },
    { plate: 'Slab', kind: 'flat thick plate', highestSetting: 230, warmUp: 0 },
  ],
  molds: [
    { mold: 'Stick', kind: 'open', blockLength: 152.4, blockWidth: 101.6, blockHeight: 31.75 },
    { mold: 'Worm', kind: 'open', blockLength: 150, blockWidth: 110, blockHeight: 25.4 },
    { mold: 'Blank', kind: 'open' },
  ],
  materials: [
    { material: 'Soft', kind: 'plastisol' },
    { material: 'Black', kind: 'colorant', density: 1.2 },
    { material: 'Plain', kind: 'colorant' },
  ],
};

/** A book as its sheets would read, from rows in the system's units; tables that are not given are those of {@link BENCH}. */
export function trialBookOf(
  rows: TrialRows,
  shop: Partial<Shop> = {},
  system: UnitSystem = 'metric',
): TrialBook {
  const settings = settingRows(system, {} as Parameters<typeof settingRows>[1], {
    units: system,
    ...shop,
  }); // no notes are read
  const cells: Record<string, readonly (readonly CellValue[])[]> = {
    shop: [SHOP_HEADINGS, ...settings.map((row) => row.cells)],
  };
  for (const key of TRIAL_TABLES) {
    const columns = Object.entries(TABLES[key].columns);
    const headings = columns.map(([, column]) => headingOf(column, system));
    const given = rows[key] ?? BENCH[key] ?? [];
    cells[key] = [headings, ...given.map((row) => columns.map(([name]) => row[name] ?? ''))];
  }
  return trialBook(readBook(TRIAL_TABLES, cells as BookCells<(typeof TRIAL_TABLES)[number]>)); // shop and every table of trials were just set
}
