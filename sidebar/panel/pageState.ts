import type { LogForm, OutcomeLogged } from '../../shared/commands/logCommands.ts';
import type { TraceAnswer, UseForm } from '../../shared/commands/stockCommands.ts';
import type { RunningTimer, TimerChoice } from '../../shared/day/timers/timerTypes.ts';
import type { Problem } from '../../shared/errors/refuse.ts';
import type { BooksSummary } from '../../shared/money/books/booksSummary.ts';
import type { StockSummary } from '../../shared/money/stock/stockSummary.ts';
import type { CausesSummary } from '../../shared/outcomes/causes/causesSummary.ts';
import type { QualitySummary } from '../../shared/outcomes/quality/qualitySummary.ts';
import type { PlanResult } from '../../shared/plan/planTypes.ts';
import type { TrialsFound } from '../../shared/trials/proposal.ts';
import type { DayOnShow } from '../day/dayOnShow.ts';
import type { QuoteOnShow } from '../quote/quoteOnShow.ts';
import type { Draft } from './draft.ts';

interface Notice {
  readonly kind: 'problem' | 'done';
  readonly texts: readonly string[];
}

/** Everything that is on show. */
export interface PageState {
  readonly view:
    | 'plan'
    | 'log'
    | 'logged'
    | 'trials'
    | 'use'
    | 'stock'
    | 'quote'
    | 'books'
    | 'timers'
    | 'day'
    | 'quality'
    | 'causes';
  /** What the page waits for; "" when it waits for nothing. */
  readonly busy: string;
  readonly notice: Notice | undefined;
  readonly plan: PlanResult | undefined;
  /** The chosen clock time of the first pour, `09:30`; "" takes the row's own. */
  readonly firstPour: string;
  /** Run whose sheet was made last for the order on show; "" before. */
  readonly runId: string;
  /** The plan that the run sheet was made from: only that one may be printed under the run's id. */
  readonly sheetOf: PlanResult | undefined;
  readonly form: LogForm | undefined;
  readonly draft: Draft | undefined;
  /** What is wrong with the form, by field. */
  readonly problems: readonly Problem[];
  readonly logged: OutcomeLogged | undefined;
  /** What the book's trials say, as read last. */
  readonly trials: TrialsFound | undefined;
  /** Initials for the journal of measured figures. */
  readonly who: string;
  /** What the run that was logged last takes out of stock. */
  readonly use: UseForm | undefined;
  /** Amounts as typed, by their fields. */
  readonly amounts: Readonly<Record<string, string>>;
  readonly stock: StockSummary | undefined;
  /** Lot, order or run as typed, and what was found for the one asked last. */
  readonly lotName: string;
  readonly trace: TraceAnswer | undefined;
  readonly quote: QuoteOnShow | undefined;
  readonly quality: QualitySummary | undefined;
  readonly books: BooksSummary | undefined;
  readonly day: DayOnShow | undefined;
  /** Those that run; undefined where the workbook did not tell. */
  readonly timers: readonly RunningTimer[] | undefined;
  /** What can be started for the order that was on show. */
  readonly timerChoices:
    | { readonly order: string; readonly choices: readonly TimerChoice[] }
    | undefined;
  /** What went wrong in the round asked about last. */
  readonly causes: CausesSummary | undefined;
}

export const FIRST_STATE: PageState = {
  view: 'plan',
  busy: '',
  notice: undefined,
  plan: undefined,
  firstPour: '',
  runId: '',
  sheetOf: undefined,
  form: undefined,
  draft: undefined,
  problems: [],
  logged: undefined,
  trials: undefined,
  who: '',
  use: undefined,
  amounts: {},
  stock: undefined,
  lotName: '',
  trace: undefined,
  quote: undefined,
  quality: undefined,
  books: undefined,
  day: undefined,
  timers: [],
  timerChoices: undefined,
  causes: undefined,
};
