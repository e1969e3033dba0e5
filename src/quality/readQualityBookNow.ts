import type { CellValue } from '../../shared/book/parseCell.ts';
import { readShop } from '../../shared/book/readShop.ts';
import { readTable } from '../../shared/book/readTable.ts';
import { TABLES } from '../../shared/book/tables.ts';
import type { QualityBook } from '../../shared/outcomes/qualityOnShow.ts';
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
