import type { SheetBlock, SheetCell, SheetFact } from '../runSheetTypes.ts';
import { addRow } from './addRow.ts';
import { type RunSheetDraft, TAB_WIDTHS, type TabCell, type TabStyle } from './tabTypes.ts';

const WIDTH = TAB_WIDTHS.length;
/** Letters of 10 pt text that a line across the tab holds. */
const LINE_LETTERS = 118;
const LINE_HEIGHT = 17;
const ROW_HEIGHT = 26;
/** Facts side by side, each a label and its value. */
const FACTS_A_ROW = 4;

type Table = Extract<SheetBlock, { readonly kind: 'table' }>;
type Checklist = Extract<SheetBlock, { readonly kind: 'checklist' }>;

/** A text across the whole tab, as high as its lines. */
export function addLine(draft: RunSheetDraft, text: string, style: TabStyle): void {
  const lines = Math.ceil(text.length / LINE_LETTERS) || 1;
  const row = addRow(draft, lines * LINE_HEIGHT + 4, new Map([[1, { value: text, style }]]));
  draft.merges.push({ row, column: 1, rows: 1, columns: WIDTH });
}

/** Label and value pairs; a tick box takes the label's place. */
export function addFacts(draft: RunSheetDraft, facts: readonly SheetFact[]): void {
  for (let first = 0; first < facts.length; first += FACTS_A_ROW) {
    const cells = new Map<number, TabCell>();
    const row = draft.rows.length + 1;
    facts.slice(first, first + FACTS_A_ROW).forEach(({ label, cell }, index) => {
      const column = 1 + index * 3;
      if (cell.kind === 'boxes') {
        cells.set(column, { value: false, style: 'tick' });
        cells.set(column + 1, { value: label, style: 'item' });
        draft.ticks.push({ row, column, rows: 1, columns: 1 });
        return;
      }
      cells.set(column, { value: label, style: 'label' });
      cells.set(column + 1, tabCell(cell));
      draft.merges.push({ row, column: column + 1, rows: 1, columns: 2 });
      if (cell.kind === 'write')
        draft.frames.push({ row, column: column + 1, rows: 1, columns: 2 });
    });
    addRow(draft, ROW_HEIGHT + 4, cells);
  }
}

/** Lists two by two: a tick box, then the item running over the blank cells beside it. */
export function addChecklists(draft: RunSheetDraft, lists: readonly Checklist[]): void {
  for (let first = 0; first < lists.length; first += 2) {
    const pair = lists.slice(first, first + 2);
    const heads = pair.map((list, side): [number, TabCell] => [
      side === 0 ? 1 : 7,
      { value: list.name, style: 'list name' },
    ]);
    addRow(draft, ROW_HEIGHT, new Map(heads));
    const top = draft.rows.length + 1;
    const longest = Math.max(...pair.map((list) => list.items.length));
    for (let item = 0; item < longest; item++) {
      const cells = new Map<number, TabCell>();
      pair.forEach((list, side) => {
        const text = list.items[item];
        if (text === undefined) return;
        cells.set(side === 0 ? 1 : 7, { value: false, style: 'tick' });
        cells.set(side === 0 ? 2 : 8, { value: text, style: 'item' });
      });
      addRow(draft, ROW_HEIGHT, cells);
    }
    pair.forEach((list, side) => {
      const column = side === 0 ? 1 : 7;
      draft.ticks.push({ row: top, column, rows: list.items.length, columns: 1 });
    });
  }
}

/** A table wider than the tab goes on below, its first column repeated. */
export function addTableBlock(draft: RunSheetDraft, table: Table): void {
  const pick = <Item>(items: readonly Item[], from: number) => [
    ...items.slice(0, 1),
    ...items.slice(from, from + WIDTH - 1),
  ];
  for (let from = 1; from < table.headings.length; from += WIDTH - 1)
    addPart(draft, {
      ...table,
      headings: pick(table.headings, from),
      widths: pick(table.widths, from),
      rows: table.rows.map((row) => pick(row, from)),
    });
}

/** Each column of a table takes one or more of the tab's, in proportion to its width. */
function addPart(draft: RunSheetDraft, table: Table): void {
  const spans = spansOf(table);
  const top = draft.rows.length + 1;
  const heads = table.headings.map(
    (heading): TabCell => ({ value: heading, style: 'column head' }),
  );
  addSpanned(draft, heads, spans);
  for (const line of table.rows) addTableRow(draft, line, spans);
  const last = spans[spans.length - 1];
  const columns = last ? last.column + last.columns - 1 : WIDTH;
  draft.frames.push({ row: top, column: 1, rows: draft.rows.length - top + 1, columns });
}

interface Span {
  readonly column: number;
  readonly columns: number;
}

function addTableRow(
  draft: RunSheetDraft,
  line: readonly SheetCell[],
  spans: readonly Span[],
): void {
  const cells = new Map<number, TabCell>();
  const row = draft.rows.length + 1;
  line.forEach((cell, index) => {
    const { column, columns } = spans[index] ?? { column: 1, columns: 1 };
    if (cell.kind === 'boxes' && cell.count <= columns) {
      for (let box = 0; box < cell.count; box++)
        cells.set(column + box, { value: false, style: 'tick' });
      draft.ticks.push({ row, column, rows: 1, columns: cell.count });
      return;
    }
    cells.set(column, tabCell(cell));
    if (columns > 1) draft.merges.push({ row, column, rows: 1, columns });
  });
  addRow(draft, ROW_HEIGHT, cells);
}

function addSpanned(draft: RunSheetDraft, line: readonly TabCell[], spans: readonly Span[]): void {
  const row = draft.rows.length + 1;
  const cells = new Map<number, TabCell>();
  line.forEach((cell, index) => {
    const { column, columns } = spans[index] ?? { column: 1, columns: 1 };
    cells.set(column, cell);
    if (columns > 1) draft.merges.push({ row, column, rows: 1, columns });
  });
  addRow(draft, ROW_HEIGHT, cells);
}

/** Tables of more than half the tab's columns keep one each; narrower ones share the tab out by their widths. */
function spansOf(table: Table): readonly Span[] {
  if (table.widths.length * 2 > WIDTH)
    return table.widths.map((_, index) => ({ column: index + 1, columns: 1 }));
  const total = table.widths.reduce((sum, width) => sum + width, 0);
  const page = TAB_WIDTHS.reduce((sum, width) => sum + width, 0);
  let column = 1;
  return table.widths.map((width, index) => {
    const left = table.widths.length - index - 1;
    const most = WIDTH - column + 1 - left;
    let columns = 1;
    const isEnough = () => widthOf(column, columns) >= (width / total) * page * 0.9;
    while (columns < most && (left === 0 || !isEnough())) columns++;
    const span = { column, columns };
    column += columns;
    return span;
  });
}

function widthOf(column: number, columns: number): number {
  return TAB_WIDTHS.slice(column - 1, column - 1 + columns).reduce((sum, width) => sum + width, 0);
}

function tabCell(cell: SheetCell): TabCell {
  switch (cell.kind) {
    case 'text':
      return {
        value: cell.note === undefined ? cell.text : `${cell.text} (${cell.note})`,
        style: cell.size ?? 'plain',
      };
    case 'write':
      return { value: cell.unit, style: 'unit' };
    case 'boxes':
      return { value: `of ${cell.count}`, style: 'unit' };
  }
}
