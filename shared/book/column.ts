import type { Bounds } from '../errors/requireNumber.ts';
import type { MeasureName } from '../units/measures.ts';

interface ColumnBase {
  /** The heading without its unit; the unit is added in parentheses from `measure`. */
  readonly heading: string;
  /** The note on the heading: what to type, and what it is used for. */
  readonly about: string;
  /** Width on screen [px]. */
  readonly width: number;
  readonly required?: true;
}

/** Free text, kept as typed and never read as a formula. */
interface TextColumn extends ColumnBase {
  readonly kind: 'text';
  /** The table and column that the text must be found in; gives the drop-down. */
  readonly refers?: { readonly sheet: SheetName; readonly column: string };
}

/** A number; bounds are in engine units. */
export interface NumberColumn extends ColumnBase {
  readonly kind: 'number';
  readonly measure?: MeasureName;
  readonly bounds?: Bounds;
  /** Digits shown after the point. */
  readonly places: number;
}

export interface ChoiceColumn extends ColumnBase {
  readonly kind: 'choice';
  readonly choices: readonly string[];
}

/** A calendar day, `2026-11-25` in a record. */
interface DateColumn extends ColumnBase {
  readonly kind: 'date';
}

/** A time of day typed as text (`9:30`, `1:15 pm`), minutes after midnight in a record. */
export interface ClockColumn extends ColumnBase {
  readonly kind: 'clock';
}

/** An amount of the workbook's currency. */
interface MoneyColumn extends ColumnBase {
  readonly kind: 'money';
  readonly bounds?: Bounds;
}

/** Filled by one array formula that stands in the heading cell; never read back. */
export interface ComputedColumn extends ColumnBase {
  readonly kind: 'computed';
  /** Digits shown after the point; absent for text. */
  readonly places?: number;
  /** A share, shown as per cent. */
  readonly measure?: 'fraction';
  /** Filled by the money of the order instead of its plan. */
  readonly by?: 'money';
}

export type Column =
  | TextColumn
  | NumberColumn
  | ChoiceColumn
  | DateColumn
  | ClockColumn
  | MoneyColumn
  | ComputedColumn;

export type SheetName =
  | 'Shop'
  | 'Orders'
  | 'Molds'
  | 'Patterns'
  | 'Doses'
  | 'Materials'
  | 'Supplies'
  | 'Plates'
  | 'People'
  | 'Pour log'
  | 'Heat trials'
  | 'Bench trials'
  | 'Measured figures'
  | 'Quotes'
  | 'Stock moves'
  | 'Payments'
  | 'Closed months';

/** One sheet of the book whose rows are records. Column order is the order on the sheet. */
export interface Table {
  readonly sheet: SheetName;
  /** What a row is. */
  readonly about: string;
  readonly columns: Readonly<Record<string, Column>>;
  /** Rows are only ever added; corrections are new rows. */
  readonly growth?: 'append only';
}

type CellOf<C extends Column> = C extends { readonly kind: 'number' | 'money' | 'clock' }
  ? number
  : C extends { readonly kind: 'choice'; readonly choices: readonly (infer Choice)[] }
    ? Choice
    : string;

/** A row as the engine sees it: engine units, absent where the cell is blank or was refused. */
export type RecordOf<T extends Table> = {
  readonly [Key in keyof T['columns'] as T['columns'][Key] extends ComputedColumn ? never : Key]?:
    | CellOf<T['columns'][Key]>
    | undefined;
};
