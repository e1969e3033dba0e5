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

/** A change to the workbook: a Univer mutation, numbered in the order in which the host applied it. */
export interface Operation {
  readonly sequence: number;
  readonly id: string;
  readonly params: unknown;
  /** The window that made the change, or 'host'. */
  readonly origin: string;
}

export type HostEvent =
  | { readonly kind: 'operation'; readonly operation: Operation }
  | { readonly kind: 'calculated'; readonly sequence: number; readonly values: unknown }
  | { readonly kind: 'ui'; readonly window: string; readonly request: UiRequest }
  | { readonly kind: 'progress'; readonly text: string }
  | { readonly kind: 'saved'; readonly file: string };

export interface Selection {
  readonly sheet: string;
  /** A1 notation without the sheet, e.g. `B7` or `B7:D9`. */
  readonly range: string;
}

/** One workbook, its formula engine and the built add-on. Everything the server, the command line and the tests need. */
export interface Host {
  /** The whole workbook for a window that starts or restarts, with the sequence number it stands at. */
  snapshot(): { readonly sequence: number; readonly workbook: unknown; readonly values: unknown };
  /** Applies a window's change; `stale` when rows, columns or sheets moved since it was made. */
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
  answer(id: number, button: string): void;
  menus(): readonly Menu[];
  /** Why a cell shows an error: the message of the sheet function that failed there, if any. */
  cellMessage(sheet: string, cell: string): string | undefined;
  /** Typed as a user would type it: text, number, formula. For tests and the command line. */
  type(sheet: string, cell: string, text: string): void;
  /** Shown values of a range, spills included. */
  values(sheet: string, range: string): readonly (readonly unknown[])[];
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
  readonly timeZone?: string;
  /** The instant the platform's clock shows, for repeatable tests; the real clock when absent. */
  readonly now?: () => Date;
}
