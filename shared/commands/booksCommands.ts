import type { BooksSummary } from '../money/books/booksSummary.ts';
import type { ExportTable } from '../money/books/exportTable.ts';

export interface BooksAnswer extends BooksSummary {
  readonly kind: 'ok';
}

interface CloseMonthPayload {
  /** `yyyy-mm` */
  readonly month: string;
  /** Initials */
  readonly who?: string | undefined;
}

/** The books after a month was closed. */
export interface MonthClosed extends BooksAnswer {
  /** `before` when it was closed already and nothing was written now. */
  readonly closed: 'now' | 'before';
}

interface ExportPayload {
  /** One of `EXPORTS`. */
  readonly what: string;
}

export interface ExportAnswer extends ExportTable {
  readonly kind: 'ok';
  /** Without its ending. */
  readonly fileName: string;
}

interface OverviewWritten {
  readonly kind: 'ok';
  readonly sheet: string;
}

type Nothing = Readonly<Record<string, never>>;

/** Commands of the books. */
export interface BooksCommands {
  readonly readBooks: { readonly payload: Nothing; readonly answer: BooksAnswer };
  readonly closeMonth: { readonly payload: CloseMonthPayload; readonly answer: MonthClosed };
  readonly exportRows: { readonly payload: ExportPayload; readonly answer: ExportAnswer };
  readonly updateOverview: { readonly payload: Nothing; readonly answer: OverviewWritten };
}
