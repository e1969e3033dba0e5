import type { RecordOf } from '../book/column.ts';
import type { TABLES, TableKey } from '../book/tables.ts';
import type { ChecklistRow } from '../day/checklist/checklistRow.ts';
import type { FollowedDay } from '../day/shop/followedDay.ts';
import type { RunningTimer } from '../day/timers/timerTypes.ts';
import type { OverviewTab } from '../paper/overview/overviewTypes.ts';
import type { RunSheetCells } from '../paper/runSheet/tab/tabTypes.ts';
import type { DayFrame } from '../words/momentText.ts';

/** Rows under the last of a table. */
type Append = {
  readonly [Key in TableKey]: {
    readonly kind: 'append';
    readonly table: Key;
    readonly records: readonly RecordOf<(typeof TABLES)[Key]>[];
  };
}[TableKey];

/** Some cells of a row; a key that is there without a value clears its cell. */
type Change = {
  readonly [Key in TableKey]: {
    readonly kind: 'change';
    readonly table: Key;
    readonly row: number;
    readonly cells: Partial<RecordOf<(typeof TABLES)[Key]>>;
  };
}[TableKey];

/** One number in a cell that the decision has found itself, in the cell's unit; `""` clears it. */
export interface CellWrite {
  readonly kind: 'cell';
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly value: number | '';
}

/** What a decision wants written; tables and cells first, whole sheets and kept values with them in the order given. */
export type Write =
  | Append
  | Change
  | CellWrite
  | { readonly kind: 'run sheet'; readonly cells: RunSheetCells }
  | { readonly kind: 'overview'; readonly tab: OverviewTab }
  | {
      readonly kind: 'checklist';
      readonly rows: readonly ChecklistRow[];
      readonly frame: DayFrame;
    }
  | { readonly kind: 'followed day'; readonly day: FollowedDay }
  | { readonly kind: 'timers'; readonly timers: readonly RunningTimer[] };
