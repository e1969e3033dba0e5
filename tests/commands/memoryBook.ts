import type { BookCells } from '../../shared/book/book.ts';
import type { Table } from '../../shared/book/column.ts';
import { tableCells } from '../../shared/book/layout/tableCells.ts';
import { type TypedRow, typedRecords } from '../../shared/book/layout/typedRow.ts';
import { findColumns } from '../../shared/book/reading/findColumns.ts';
import { headingOf } from '../../shared/book/reading/headingOf.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { settingRows } from '../../shared/book/settings/settingRows.ts';
import { SHOP_HEADINGS, type Shop } from '../../shared/book/settings/settings.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import { ALL_COMMANDS } from '../../shared/commands/allCommands.ts';
import { cellsAfter } from '../../shared/commands/cellsAfter.ts';
import { type Context, isRefused, type Shown } from '../../shared/commands/command.ts';
import type { AnswerOf, CommandName } from '../../shared/commands/commandTypes.ts';
import { decideCommand, type PlacedDecision } from '../../shared/commands/decideCommand.ts';
import type { PlacedWrite } from '../../shared/commands/placeWrites.ts';
import { readPayload } from '../../shared/commands/readPayload.ts';
import type { RunningTimer } from '../../shared/day/timers/timerTypes.ts';
import { demoRows, demoSettings } from '../../templates/demoShop/demoShop.ts';

type Cells = BookCells<TableKey>;
type Key = TableKey | 'shop';
type Whole = Exclude<PlacedDecision['writes'][number], PlacedWrite>;

/** A workbook in memory: commands are decided on its cells as the platform's shell does, and written into them. */
export interface MemoryBook {
  /** Runs a command as a page does; the payload passes through JSON. */
  readonly ask: <Name extends CommandName>(name: Name, payload?: unknown) => AnswerOf<Name>;
  /** Cells of a sheet, heading row first. */
  readonly cells: (key: Key) => BookCells['shop'];
  /** Filled rows of a table by their headings, the first is row 2. */
  readonly rows: (key: TableKey) => readonly Readonly<Record<string, CellValue>>[];
  /** Puts a value into a cell, its row counted from 1 and its column from 0. */
  readonly put: (key: Key, row: number, column: number, value: CellValue) => void;
  /** Types into the cell of a row under a heading, or of a setting of the shop. */
  readonly type: (key: TableKey, row: number, heading: string, value: CellValue) => void;
  readonly set: (label: string, value: CellValue) => void;
  /** Takes a column out, as somebody might. */
  readonly dropColumn: (key: TableKey, heading: string) => void;
  /** Whole sheets and kept values that were written, in order. */
  readonly wholes: readonly Whole[];
  /** What was shown, in order. */
  readonly shown: readonly Shown[];
  /** Every block of cells that was written, in order. */
  readonly blocks: readonly PlacedWrite[];
}

/** Where and when commands are asked; the current cell is A2 of *Orders*, the moment 2026-12-01 13:00. */
export type Moment = Partial<Omit<Context, 'cells' | 'timers' | 'followedDay'>>;

/** A book of the invented shop, or of other rows and settings. */
export function memoryBook({
  rows = demoRows(),
  settings = demoSettings(),
  moment = {},
}: {
  readonly rows?: { readonly [Each in TableKey]?: readonly TypedRow<(typeof TABLES)[Each]>[] };
  readonly settings?: Partial<Shop>;
  readonly moment?: Moment;
} = {}): MemoryBook {
  let sheets = startingCells(rows, settings);
  let timers: readonly RunningTimer[] = [];
  const wholes: Whole[] = [];
  const blocks: PlacedWrite[] = [];
  const shown: Shown[] = [];
  const keys = Object.keys(TABLES) as TableKey[]; // keys of the one list of tables
  let tokens = 0;
  const context = (key: (key: Key) => BookCells['shop']): Context => ({
    today: () => '2026-12-01',
    minute: () => '2026-12-01 13:00',
    instant: () => Date.parse('2026-12-01T20:00:00Z'),
    secondsSince: () => 0,
    freshToken: () => {
      tokens += 1;
      return `token ${tokens}`;
    },
    selection: () => ({ sheet: 'Orders', row: 2 }),
    runSheetTexts: () => [],
    checklist: () => [],
    ...moment,
    cells: key,
    followedDay: () =>
      wholes.flatMap((one) => (one.kind === 'followed day' ? [one.day] : [])).at(-1),
    timers: () => timers,
  });
  const write = (writes: PlacedDecision['writes']) => {
    const cells = writes.filter((one): one is PlacedWrite => one.kind === 'cells');
    blocks.push(...cells);
    sheets = cellsAfter(keys, (key) => sheets[key], cells);
    for (const one of writes) {
      if (one.kind !== 'cells') wholes.push(one);
      if (one.kind === 'timers') timers = one.timers;
    }
  };
  return {
    ask: <Name extends CommandName>(name: Name, payload: unknown = {}) => {
      const command = ALL_COMMANDS[name];
      const read = readPayload(command.payload, JSON.parse(JSON.stringify(payload)));
      if (read.kind === 'refused') return read as AnswerOf<Name>;
      const own: readonly Key[] = command.tables.length === 0 ? [] : [...command.tables, 'shop'];
      const decision = decideCommand(
        command,
        read.value,
        context((key) => (own.includes(key) ? sheets[key] : [])),
      );
      if (isRefused(decision)) return decision as AnswerOf<Name>;
      write(decision.writes);
      if (decision.shows) shown.push(decision.shows);
      return JSON.parse(JSON.stringify(decision.answer)) as AnswerOf<Name>; // the command's own answer
    },
    cells: (key) => sheets[key],
    rows: (key) => {
      const [headings = [], ...lines] = sheets[key];
      return lines
        .filter((line) => line.some((cell) => cell !== ''))
        .map((line) =>
          Object.fromEntries(headings.map((name, at) => [String(name), line[at] ?? ''])),
        );
    },
    put: (key, row, column, value) => {
      sheets = { ...sheets, [key]: withCell(sheets[key], row, column, value) };
    },
    type: (key, row, heading, value) => {
      const column = columnOf(sheets[key], heading);
      sheets = { ...sheets, [key]: withCell(sheets[key], row, column, value) };
    },
    set: (label, value) => {
      const row = sheets.shop.findIndex(([name]) => name === label) + 1;
      if (row === 0) throw new Error(`no setting ${label}`);
      sheets = { ...sheets, shop: withCell(sheets.shop, row, 1, value) };
    },
    dropColumn: (key, heading) => {
      const column = columnOf(sheets[key], heading);
      const left = sheets[key].map((line) => line.filter((_, at) => at !== column));
      sheets = { ...sheets, [key]: left };
    },
    wholes,
    blocks,
    shown,
  };
}

function columnOf(rows: BookCells['shop'], heading: string): number {
  const column =
    rows[0]?.findIndex((name) => String(name).replace(/ \(.*\)$/, '') === heading) ?? -1;
  if (column < 0) throw new Error(`no column ${heading}`);
  return column;
}

function withCell(
  rows: BookCells['shop'],
  row: number,
  column: number,
  value: CellValue,
): BookCells['shop'] {
  const lines = rows.map((line) => [...line]);
  while (lines.length < row) lines.push(new Array<CellValue>(rows[0]?.length ?? 0).fill(''));
  const line = lines[row - 1] ?? [];
  line[column] = value;
  return lines;
}

function startingCells(
  rows: { readonly [Each in TableKey]?: readonly TypedRow<(typeof TABLES)[Each]>[] },
  settings: Partial<Shop>,
): Cells {
  const notes = {} as Parameters<typeof settingRows>[1]; // no notes are read
  const shop = settingRows('US', notes, settings).map((row) => row.cells);
  const tables = (Object.keys(TABLES) as TableKey[]).map((key) => [
    key,
    cellsOf(TABLES[key], rows[key] ?? []),
  ]);
  return { shop: [SHOP_HEADINGS, ...shop], ...Object.fromEntries(tables) } as Cells; // every table
}

function cellsOf(table: Table, rows: readonly object[]): BookCells['shop'] {
  const headings = Object.values(table.columns).map((column) => headingOf(column, 'US'));
  const { places } = findColumns(table, headings);
  const records = typedRecords<Table>(table, rows as readonly TypedRow<Table>[]); // rows of this table
  return [headings, ...tableCells<Table>(records, places, headings.length, 'US')];
}
