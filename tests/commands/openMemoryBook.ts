import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import type { AnswerOf, CommandName } from '../../shared/commands/commandTypes.ts';
import { parseA1 } from '../../workbench/host/parseA1.ts';
import { type MemoryBook, memoryBook } from './memoryBook.ts';

/** A workbook in memory that is asked, read and typed into by cells, as a workbook of the local host is. */
export interface CellBook {
  readonly ask: <Name extends CommandName>(name: Name, payload: unknown) => Promise<AnswerOf<Name>>;
  readonly host: {
    readonly values: (sheet: string, range: string) => readonly (readonly CellValue[])[];
    readonly texts: (sheet: string, range: string) => readonly (readonly string[])[];
    readonly type: (sheet: string, cell: string, text: string) => void;
    readonly settled: () => Promise<void>;
  };
  readonly memory: MemoryBook;
}

const LAST = { rows: 1000, columns: 100 };

/** The invented shop, or what {@link memoryBook} is given. */
export function openMemoryBook(start: Parameters<typeof memoryBook>[0] = {}): CellBook {
  const memory = memoryBook(start);
  const values = (sheet: string, range: string) => {
    const { startRow, endRow, startColumn, endColumn } = boxOf(range);
    const rows = memory.cells(keyOf(sheet));
    return span(startRow, endRow).map((row) =>
      span(startColumn, endColumn).map((column) => rows[row]?.[column] ?? ''),
    );
  };
  return {
    ask: (name, payload) => Promise.resolve(memory.ask(name, payload)),
    host: {
      values,
      texts: (sheet, range) => values(sheet, range).map((line) => line.map(String)),
      type: (sheet, cell, text) => {
        const { startRow, startColumn } = boxOf(cell);
        memory.put(keyOf(sheet), startRow + 1, startColumn, typed(text));
      },
      settled: () => Promise.resolve(),
    },
    memory,
  };
}

function boxOf(range: string) {
  const box = parseA1(range, LAST);
  if (!box) throw new Error(`${range} is no range`);
  return box;
}

function keyOf(sheet: string): TableKey | 'shop' {
  if (sheet === 'Shop') return 'shop';
  const keys = Object.keys(TABLES) as TableKey[]; // keys of the one list of tables
  const key = keys.find((one) => TABLES[one].sheet === sheet);
  if (key === undefined) throw new Error(`there is no sheet ${sheet}`);
  return key;
}

/** What a cell holds of a typed text: a number where it is one, a text where a mark says so. */
function typed(text: string): CellValue {
  if (text.startsWith("'")) return text.slice(1);
  return text.trim() !== '' && Number.isFinite(Number(text)) ? Number(text) : text;
}

function span(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, at) => from + at);
}
