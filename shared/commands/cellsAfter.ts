import type { BookCells } from '../book/book.ts';
import type { CellValue } from '../book/reading/parseCell.ts';
import { TABLES, type TableKey } from '../book/tables.ts';
import type { PlacedCell, PlacedWrite } from './placeWrites.ts';

/**
 * The cells of sheets once writes are done, as they would be read then.
 * @param cells - as they were read, heading row first
 */
export function cellsAfter<Key extends TableKey>(
  tables: readonly Key[],
  cells: (key: Key | 'shop') => BookCells['shop'],
  writes: readonly PlacedWrite[],
): BookCells<Key> {
  const keys: readonly (Key | 'shop')[] = [...tables, 'shop'];
  const after = keys.map((key) => {
    const sheet = key === 'shop' ? 'Shop' : TABLES[key].sheet;
    return [key, writes.filter((one) => one.sheet === sheet).reduce(withBlock, cells(key))];
  });
  return Object.fromEntries(after) as BookCells<Key>; // shop and every table
}

function withBlock(
  rows: BookCells['shop'],
  { row, column, cells }: PlacedWrite,
): BookCells['shop'] {
  const width = rows[0]?.length ?? 0;
  const lines: CellValue[][] = rows.map((line) => [...line]);
  cells.forEach((block, down) => {
    const line = lines[row - 1 + down] ?? new Array<CellValue>(width).fill('');
    lines[row - 1 + down] = line;
    block.forEach((cell, right) => {
      line[column - 1 + right] = cellValue(cell);
    });
  });
  return lines;
}

function cellValue(cell: PlacedCell): CellValue {
  if (typeof cell !== 'object') return cell;
  return 'day' in cell ? cell.day : cell.text;
}
