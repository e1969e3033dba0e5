/** How a cell of the sheet *Overview* looks. */
export type OverviewStyle =
  | 'title'
  | 'heading'
  | 'head'
  | 'number head'
  | 'text'
  | 'strong'
  | 'money'
  | 'count'
  | 'share'
  | 'number'
  | 'note';

export interface OverviewCell {
  readonly value: string | number;
  readonly style: OverviewStyle;
}

/** Cells of a chart's range, counted from 1, its heading cell first. */
export interface ChartColumn {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
}

/** A chart of columns or lines: the first column names the groups, each further one is a series named by its heading. */
export interface OverviewChart {
  readonly title: string;
  readonly kind: 'columns' | 'lines';
  readonly columns: readonly ChartColumn[];
  /** The cell that its upper left corner stands at. */
  readonly row: number;
}

/** The sheet as plain data that one writer puts down. */
export interface OverviewTab {
  /** [px] */
  readonly columnWidths: readonly number[];
  /** Each as wide as `columnWidths`. */
  readonly rows: readonly (readonly OverviewCell[])[];
  /** Height of a row [px], by its number counted from 1, where it is not the usual one. */
  readonly heights: ReadonlyMap<number, number>;
  /** Rows that are one text across all columns. */
  readonly wide: readonly number[];
  readonly charts: readonly OverviewChart[];
  readonly moneyPlaces: number;
}

/** Eight columns, together a portrait page [px]. */
export const OVERVIEW_WIDTHS = [92, 84, 92, 98, 98, 80, 84, 92] as const;

/** [px] */
export const ROW_HEIGHT = 21;

/** Size of a chart on the sheet [px], and the rows it takes. */
export const CHART_SIZE = { width: 700, height: 230, rows: 11 } as const;
