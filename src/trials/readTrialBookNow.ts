import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { TABLES } from '../../shared/book/tables.ts';
import {
  readTrialBook,
  TRIAL_TABLES,
  type TrialBook,
  type TrialCells,
} from '../../shared/trials/trialBook.ts';
import { readCells } from '../platform/workbook.ts';

/** The sheets of trials as records, one read a sheet. */
export function readTrialBookNow(): TrialBook {
  const cells: Record<string, readonly (readonly CellValue[])[]> = { shop: readCells('Shop') };
  for (const key of TRIAL_TABLES) cells[key] = readCells(TABLES[key].sheet);
  return readTrialBook(cells as TrialCells); // shop and every table of trials were just set
}
