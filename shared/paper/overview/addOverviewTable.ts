import {
  CHART_SIZE,
  type ChartColumn,
  OVERVIEW_WIDTHS,
  type OverviewCell,
  type OverviewChart,
  type OverviewStyle,
  ROW_HEIGHT,
} from './overviewTypes.ts';

/** The sheet while it is laid out, row by row. */
export interface OverviewDraft {
  readonly rows: OverviewCell[][];
  readonly heights: Map<number, number>;
  readonly wide: number[];
  readonly charts: OverviewChart[];
}

/** What a table's cell may hold; undefined is blank. */
export type OverviewValue = string | number | undefined;

export interface OverviewColumn {
  readonly heading: string;
  readonly style: Extract<
    OverviewStyle,
    'text' | 'strong' | 'money' | 'count' | 'share' | 'number'
  >;
}

/** Characters of a note that fit on a line of the sheet. */
const LINE = 118;

/** Above a heading [px]. */
const SPACE = 10;

const BLANK: OverviewCell = { value: '', style: 'text' };

/** One text across the sheet, as high as it needs to be. */
export function addWide(draft: OverviewDraft, value: string, style: OverviewStyle): void {
  draft.rows.push(filled([{ value, style }]));
  const row = draft.rows.length;
  draft.wide.push(row);
  const lines = Math.ceil(value.length / LINE);
  const high = style === 'title' ? 30 : style === 'heading' ? 26 : ROW_HEIGHT;
  draft.heights.set(row, Math.max(high, lines * 17 + 4));
}

/** A heading, apart from what is above it. */
export function addHeading(draft: OverviewDraft, heading: string): void {
  draft.rows.push(filled([]));
  draft.heights.set(draft.rows.length, SPACE);
  addWide(draft, heading, 'heading');
}

/**
 * A table with its headings.
 * @returns the range of each column, heading first
 */
export function addOverviewTable(
  draft: OverviewDraft,
  columns: readonly OverviewColumn[],
  lines: readonly (readonly OverviewValue[])[],
): readonly ChartColumn[] {
  const row = draft.rows.length + 1;
  draft.rows.push(
    filled(
      columns.map(({ heading, style }) => ({
        value: heading,
        style: style === 'text' || style === 'strong' ? 'head' : 'number head',
      })),
    ),
  );
  for (const line of lines) {
    const cells = columns.map(({ style }, index) => ({ value: line[index] ?? '', style }));
    draft.rows.push(filled(cells));
    const longest = Math.max(...cells.map((cell, index) => linesOf(cell, index)));
    if (longest > 1) draft.heights.set(draft.rows.length, longest * 16 + 5);
  }
  const rows = lines.length + 1;
  return columns.map((_, index) => ({ row, column: index + 1, rows }));
}

/** A chart below what was laid out so far, in rows of its own. */
export function addChart(
  draft: OverviewDraft,
  title: string,
  columns: readonly (ChartColumn | undefined)[],
  kind: OverviewChart['kind'] = 'columns',
): void {
  const ranges = columns.filter((column) => column !== undefined);
  draft.charts.push({ title, kind, columns: ranges, row: draft.rows.length + 1 });
  for (let count = 0; count < CHART_SIZE.rows; count += 1) draft.rows.push(filled([]));
}

/** Lines that a text takes in its column, at about seven pixels a character. */
function linesOf({ value }: OverviewCell, index: number): number {
  const width = OVERVIEW_WIDTHS[index] ?? 80;
  return typeof value === 'number' ? 1 : Math.ceil((value.length * 6.5) / width);
}

function filled(cells: readonly OverviewCell[]): OverviewCell[] {
  return OVERVIEW_WIDTHS.map((_, index) => cells[index] ?? BLANK);
}
