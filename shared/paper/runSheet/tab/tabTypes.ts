/** How a cell of the *Run sheet* tab looks; sizes are in {@link TAB_STYLES}. */
export type TabStyle =
  | 'title'
  | 'heading'
  | 'list name'
  | 'column head'
  | 'label'
  | 'plain'
  | 'item'
  | 'strong'
  | 'key'
  | 'small'
  | 'unit'
  | 'tick';

export interface TabLook {
  /** Font size [pt]. */
  readonly size: number;
  readonly weight: 'normal' | 'bold';
}

export const TAB_STYLES: Readonly<Record<TabStyle, TabLook>> = {
  title: { size: 13, weight: 'bold' },
  heading: { size: 12, weight: 'bold' },
  'list name': { size: 12, weight: 'bold' },
  'column head': { size: 9, weight: 'normal' },
  label: { size: 10, weight: 'normal' },
  plain: { size: 12, weight: 'normal' },
  item: { size: 12, weight: 'normal' },
  strong: { size: 12, weight: 'bold' },
  key: { size: 18, weight: 'bold' },
  small: { size: 10, weight: 'normal' },
  unit: { size: 9, weight: 'normal' },
  tick: { size: 18, weight: 'normal' },
};

/** A cell's text, or `false` for an empty tick box. */
export interface TabCell {
  readonly value: string | false;
  readonly style: TabStyle;
}

/** A rectangle of cells, counted from 1. */
export interface TabBox {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

interface TabRow {
  /** [px] */
  readonly height: number;
  /** One for each column of the tab. */
  readonly cells: readonly TabCell[];
}

/** The run sheet as cells: plain data that one writer puts on the sheet. */
export interface RunSheetCells {
  /** [px] */
  readonly columnWidths: readonly number[];
  readonly rows: readonly TabRow[];
  readonly merges: readonly TabBox[];
  /** Rectangles with a line around every cell. */
  readonly frames: readonly TabBox[];
  /** Rectangles whose every cell is a tick box. */
  readonly ticks: readonly TabBox[];
}

/** Columns of the tab [px]: five for what is planned, eight to write in; together a portrait page at full width. */
export const TAB_WIDTHS = [88, 62, 66, 74, 74, 46, 46, 46, 46, 46, 46, 46, 46] as const;

/** A run sheet's cells while they are laid out, row by row. */
export interface RunSheetDraft {
  readonly rows: TabRow[];
  readonly merges: TabBox[];
  readonly frames: TabBox[];
  readonly ticks: TabBox[];
}
