/** What an add-on call may answer: a JSON value, or one sentence for the user. */
export type CallResult =
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'failure'; readonly message: string };

export interface MenuItem {
  readonly label: string;
  /** Name of the top-level function of the add-on that the item runs; absent for a separator. */
  readonly run?: string;
}

export interface Menu {
  readonly title: string;
  readonly items: readonly MenuItem[];
}

/** What the add-on asks the page to show; `alert` and `confirm` wait for {@link Host.answer}. */
export type UiRequest =
  | { readonly kind: 'sidebar'; readonly title: string; readonly html: string }
  | {
      readonly kind: 'dialog';
      readonly title: string;
      readonly html: string;
      readonly width: number;
      readonly height: number;
    }
  | {
      readonly kind: 'alert';
      readonly id: number;
      readonly title: string;
      readonly text: string;
      readonly buttons: 'ok' | 'ok-cancel' | 'yes-no';
    }
  | { readonly kind: 'toast'; readonly title: string; readonly text: string }
  | { readonly kind: 'activate'; readonly sheet: string; readonly range: string };

/**
 * A Univer mutation that brings calculated values into a window's copy of the workbook.
 *
 * Run each in order with `commandService.syncExecuteCommand(id, params, { onlyLocal: true, fromFormula: true })` and with
 * `params.unitId` left as it is (every window uses the unit id of the snapshot). They are
 * `formula.mutation.set-array-formula-data` (spilled cells and their extents, the whole workbook's),
 * `sheet.mutation.set-range-values` (values of formula cells, one per sheet) and, in a snapshot only,
 * `workbench.protections` and `workbench.charts`, which are no Univer mutations: see {@link Operation}.
 */
export interface LocalMutation {
  readonly id: string;
  readonly params: unknown;
}

/**
 * A range or sheet protected by the add-on, in the params of `workbench.protections`: the whole list, replacing the last.
 * Rows and columns count from 0, ends included; no `box` means the whole sheet (by its Univer sheet id).
 * `warningOnly`: ask before an edit inside; otherwise the owner, who sits at the workbench, edits freely.
 */
export interface ProtectedRange {
  readonly id: number;
  readonly sheet: string;
  readonly box?: {
    readonly startRow: number;
    readonly startColumn: number;
    readonly endRow: number;
    readonly endColumn: number;
  };
  readonly description: string;
  readonly warningOnly: boolean;
}

/**
 * A chart of columns, or of lines where it says so, in the params of `workbench.charts`: the whole list, replacing the last. Rows and columns count from 0,
 * ends included; the first range names the groups, each further one is a series; `headers` rows at the top name it.
 */
export interface ShownChart {
  readonly id: number;
  /** Univer's id of the sheet it stands on. */
  readonly sheet: string;
  readonly title: string;
  readonly kind?: 'lines';
  readonly headers: number;
  readonly ranges: readonly {
    readonly sheet: string;
    readonly box: NonNullable<ProtectedRange['box']>;
  }[];
}

/**
 * A change to the workbook: a Univer mutation, numbered in the order in which the host applied it.
 *
 * A window runs it with `syncExecuteCommand(id, params, { fromCollab: true, fromChangeset: true })`, except its own
 * (`origin` equals its name), which it made already. Univer does not know the ids `workbench.protections`, whose params
 * are `readonly ProtectedRange[]`, and `workbench.charts`, with `readonly ShownChart[]`. Notes stand in a cell's `custom.note`.
 *
 * A window's own grid must read open ranges (`A2:A`) as the host does, or its inserted rows leave them behind: run
 * `readOpenRanges(injector.get(LexerTreeBuilder))` and `keepOpenRanges(commandService, SetRangeValuesMutation.id)` of
 * openRanges.ts, which imports nothing at run time, before the workbook is created.
 */
export interface Operation {
  readonly sequence: number;
  readonly id: string;
  readonly params: unknown;
  /** The window that made the change, or 'host'. */
  readonly origin: string;
}

export type HostEvent =
  | { readonly kind: 'operation'; readonly operation: Operation }
  /** Sent after each calculation; `values` as in {@link Host.snapshot}. Serialize it at once: the engine goes on using it. */
  | {
      readonly kind: 'calculated';
      readonly sequence: number;
      readonly values: readonly LocalMutation[];
    }
  | { readonly kind: 'ui'; readonly window: string; readonly request: UiRequest }
  | { readonly kind: 'progress'; readonly text: string }
  /** A line the add-on wrote to its console. */
  | { readonly kind: 'log'; readonly text: string }
  | { readonly kind: 'saved'; readonly file: string };

export interface Selection {
  readonly sheet: string;
  /** A1 notation without the sheet, e.g. `B7` or `B7:D9`. */
  readonly range: string;
}

/** One workbook, its formula engine and the built add-on. Everything the server, the command line and the tests need. */
export interface Host {
  /**
   * The whole workbook for a window that starts or restarts, with the sequence number it stands at.
   *
   * `workbook` is Univer's IWorkbookData with the resources of the plug-ins (rules, names, filters): give it to
   * `univer.createUnit`, then run `values`.
   */
  snapshot(): {
    readonly sequence: number;
    readonly workbook: unknown;
    readonly values: readonly LocalMutation[];
  };
  /**
   * Applies a window's change; `stale` when rows, columns or sheets moved since it was made.
   *
   * `id` and `params` are a Univer mutation as the window's command service reports it, without those marked `onlyLocal`
   * or made from an operation of the host. Allowed: `sheet.mutation.*`, `data-validation.mutation.*`,
   * `sheets-filter.mutation.*`, `formula.mutation.set-defined-name` and `remove-defined-name`; others are refused, and so
   * are values that a rejecting rule forbids. The change comes back to every window as an operation with its origin.
   */
  apply(change: {
    readonly madeAt: number;
    readonly id: string;
    readonly params: unknown;
    readonly origin: string;
  }):
    | { readonly kind: 'applied'; readonly sequence: number }
    | { readonly kind: 'stale' | 'refused'; readonly because: string };
  /** Runs a top-level add-on function (menu item or sidebar call) as the platform does, one at a time. */
  call(
    name: string,
    args: readonly unknown[],
    from: { readonly window: string; readonly selection: Selection },
  ): Promise<CallResult>;
  /** Answers an alert: `ok`, `cancel`, `yes`, `no`, or `close` when the window went away. Calls wait for it. */
  answer(id: number, button: string): void;
  /** Holds the document lock as another person's run would, until the returned function is called. */
  holdLock(): () => void;
  menus(): readonly Menu[];
  /** Why a cell shows an error: the message of the sheet function that failed there, if any. */
  cellMessage(sheet: string, cell: string): string | undefined;
  /** Typed as a user would type it: text, number, formula. For tests and the command line. */
  type(sheet: string, cell: string, text: string): void;
  /** Names of the sheets in order. */
  sheets(): readonly string[];
  /** Values of a range, spills included: "" for blank, Date for dates. */
  values(sheet: string, range: string): readonly (readonly unknown[])[];
  /** The same as the grid shows them. */
  texts(sheet: string, range: string): readonly (readonly string[])[];
  /** Resolves when every change is calculated. */
  settled(): Promise<void>;
  listen(listener: (event: HostEvent) => void): () => void;
  save(): Promise<void>;
  close(): Promise<void>;
}

export interface HostOptions {
  /** The built add-on: a folder holding Code.js, appsscript.json and the HTML files, unmodified. */
  readonly dist: string;
  /** The .xlsx to open and keep; created when absent. Omit for a workbook kept in memory only. */
  readonly book?: string;
  /** The .xlsx that a workbook kept in memory only starts as a copy of; it is not written. */
  readonly copyOf?: string;
  readonly timeZone?: string;
  /** The instant the platform's clock shows, for repeatable tests; the real clock when absent. */
  readonly now?: () => Date;
  /** The spreadsheet's locale, such as `de_DE`; `en_US` when absent. */
  readonly locale?: string;
  /** What the platform tells of who edits: an address, or nothing; it may refuse by throwing. Nothing when absent. */
  readonly email?: () => string;
}
