import type { DayForm } from '../../shared/commands/checklistCommands.ts';
import type { DayAnswer, ReplanAnswer } from '../../shared/commands/dayCommands.ts';
import type { LogForm, OutcomeLogged } from '../../shared/commands/logCommands.ts';
import type { QuoteForm } from '../../shared/commands/quoteCommands.ts';
import type { TraceAnswer, UseForm } from '../../shared/commands/stockCommands.ts';
import type { TimerChoice } from '../../shared/day/timers/timerTypes.ts';
import type { Problem } from '../../shared/errors/refuse.ts';
import type { BooksSummary } from '../../shared/money/books/booksSummary.ts';
import type { QuoteFacts } from '../../shared/money/quote/quoteFacts.ts';
import type { QuoteValues } from '../../shared/money/quote/quoteFieldTypes.ts';
import type { StockSummary } from '../../shared/money/stock/stockSummary.ts';
import type { CausesSummary } from '../../shared/outcomes/causes/causesSummary.ts';
import type { QualitySummary } from '../../shared/outcomes/quality/qualitySummary.ts';
import type { TrialsFound } from '../../shared/trials/proposal.ts';
import type { Draft } from './draft.ts';

/** What a view with fields that the workbook checks has beside them. */
interface Checked {
  /** What was refused last, by field. */
  readonly problems: readonly Problem[];
}

/** The log form of the order, or of a row that is corrected. */
export interface LogView extends Checked {
  readonly kind: 'log';
  readonly form: LogForm;
  readonly draft: Draft;
}

/** What an entry of the log came to. */
export interface LoggedView {
  readonly kind: 'logged';
  readonly logged: OutcomeLogged;
  /** Values of the entry that another round starts with. */
  readonly next: Draft['values'];
}

/** What a logged run takes out of stock. */
export interface UseView extends Checked {
  readonly kind: 'use';
  readonly use: UseForm;
  /** Amounts as typed, by their fields. */
  readonly amounts: Readonly<Record<string, string>>;
}

/** What is in stock, and where a lot went. */
export interface StockView extends Checked {
  readonly kind: 'stock';
  readonly stock: StockSummary;
  /** Lot, order or run as typed. */
  readonly lotName: string;
  /** What was found for the one asked last; undefined before. */
  readonly trace: TraceAnswer | undefined;
}

/** The quote form with what was typed into it. */
export interface QuoteView extends Checked {
  readonly kind: 'quote';
  readonly form: QuoteForm;
  readonly values: QuoteValues;
  /** What the goods cost; undefined until they are known. */
  readonly facts: QuoteFacts | undefined;
  /** What the facts were worked out for, see {@link factsKey}. */
  readonly factsOf: string;
}

/** Several orders on one timetable. */
export interface DayView extends Checked {
  readonly kind: 'day';
  readonly form: DayForm;
  /** As chosen */
  readonly orders: readonly string[];
  readonly firstDay: string;
  readonly days: string;
  /** The plan of what is chosen, or the replan; undefined before and after a choice was changed. */
  readonly answer: DayAnswer | ReplanAnswer | undefined;
  /** Day of the plan whose bars are drawn, from 0; the first where it is undefined. */
  readonly drawnDay: number | undefined;
  /** Whose list is on show; "" for the first. */
  readonly person: string;
}

/** What can be started for an order; the timers that run are the state's own. */
export interface TimersView {
  readonly kind: 'timers';
  /** "" where no order was read. */
  readonly order: string;
  readonly choices: readonly TimerChoice[];
}

/** One view with exactly what it draws; the order on show and the timers outlive it. */
export type View =
  | { readonly kind: 'plan' }
  | LogView
  | LoggedView
  | UseView
  | StockView
  | QuoteView
  | DayView
  | TimersView
  | { readonly kind: 'trials'; readonly trials: TrialsFound }
  | { readonly kind: 'books'; readonly books: BooksSummary }
  | { readonly kind: 'quality'; readonly quality: QualitySummary }
  | { readonly kind: 'causes'; readonly causes: CausesSummary };

export type ViewOf<Kind extends View['kind']> = Extract<View, { readonly kind: Kind }>;

/** The view, where it is of that kind. */
export function viewOf<Kind extends View['kind']>(
  view: View | undefined,
  kind: Kind,
): ViewOf<Kind> | undefined {
  return view?.kind === kind ? (view as ViewOf<Kind>) : undefined; // told apart by its kind
}

/** The view with other messages at its fields; one without fields stays as it is. */
export function withProblems(view: View, problems: readonly Problem[]): View {
  return 'problems' in view ? { ...view, problems } : view;
}
