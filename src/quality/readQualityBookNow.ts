import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { readTable } from '../../shared/book/reading/readTable.ts';
import { readShop } from '../../shared/book/settings/readShop.ts';
import { TABLES } from '../../shared/book/tables.ts';
import type { QualityBook } from '../../shared/outcomes/quality/qualitySummary.ts';
import { readCells } from '../platform/workbook.ts';

/** What the quality is worked out from: the log, the patterns and the shop, one read a sheet. */
export function readQualityBookNow(): QualityBook {
  const cells = (sheet: string): readonly (readonly CellValue[])[] => readCells(sheet);
  return {
    shop: readShop(cells('Shop')).shop,
    patterns: readTable(TABLES.patterns, cells(TABLES.patterns.sheet)).rows,
    pourLog: readTable(TABLES.pourLog, cells(TABLES.pourLog.sheet)).rows,
  };
}
