import type { Picture } from '../pictures/pictures.ts';
import type { RunSheetDocument } from '../runSheet/documentTypes.ts';
import type { PlanResult } from '../runSheet/plan.ts';
import type { FigureKey, TrialsFound } from '../trials/proposal.ts';
import type { UnitSystem } from '../units/measures.ts';
import type { BooksVerbs } from './booksVerbs.ts';
import type { QuoteVerbs } from './quoteVerbs.ts';
import type { StockVerbs } from './stockVerbs.ts';

/** Something to mend before the verb can do its work. */
export interface Problem {
  /** The form's field; `""` when it belongs to none. */
  readonly field: string;
  /** One sentence, as `describe` words it or in full. */
  readonly text: string;
}

export interface Refused {
  readonly kind: 'refused';
  readonly problems: readonly Problem[];
}

/** A run that may be logged: a new one, or one that already has rows in the log. */
export interface RunChoice {
  readonly run: string;
  readonly rounds: number;
}

export interface PlanPayload {
  /** The order on show; the selected row when absent. */
  readonly order?: string | undefined;
  /** Clock time of the first pour as typed; the row's own when absent. */
  readonly firstPour?: string | undefined;
}

export interface PlanAnswer {
  readonly kind: 'ok';
  readonly plan: PlanResult;
}

export interface OrderPayload {
  readonly order: string;
  readonly firstPour?: string | undefined;
}

export interface RunPayload extends OrderPayload {
  readonly runId: string;
}

export interface RunSheetMade {
  readonly kind: 'ok';
  readonly runId: string;
  /** The order's status afterwards. */
  readonly status: string;
}

export interface RunSheetShown {
  readonly kind: 'ok';
  readonly runId: string;
}

export interface HeatShown {
  readonly kind: 'ok';
  readonly order: string;
}

/** What the heat dialog draws and says. */
export interface HeatPictures {
  readonly kind: 'ok';
  /** Order, pattern and mold. */
  readonly heading: string;
  readonly pictures: readonly Picture[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}

export interface DocumentAnswer {
  readonly kind: 'ok';
  readonly document: RunSheetDocument;
}

/** What the log form needs to know about an order. */
export interface LogForm {
  readonly kind: 'ok';
  readonly order: string;
  readonly mold: string;
  readonly pattern: string;
  readonly version: number;
  readonly layers: readonly string[];
  readonly quantity: number;
  /** Good pieces logged so far. */
  readonly good: number;
  readonly system: UnitSystem;
  /** Runs to choose from, the likeliest first. */
  readonly runs: readonly RunChoice[];
  /** Given anew to each form, so that an entry is written once however often it is sent. */
  readonly token: string;
}

export interface OutcomePayload {
  readonly order: string;
  readonly token: string;
  /** As typed, by the keys of the log's columns. */
  readonly values: Readonly<Record<string, string>>;
}

/** Pieces to pour for an open order of the same mold and pattern, before and after the entry. */
export interface PiecesChange {
  readonly order: string;
  readonly quantity: number;
  readonly before: number;
  readonly after: number;
}

export interface OutcomeLogged {
  readonly kind: 'ok';
  /** `before` when the same entry had been written already and nothing was written now. */
  readonly logged: 'now' | 'before';
  /** Row of the log. */
  readonly row: number;
  readonly run: string;
  readonly order: string;
  readonly quantity: number;
  /** Good pieces logged for the order, this entry included. */
  readonly good: number;
  readonly status: string;
  readonly changes: readonly PiecesChange[];
}

export interface TrialsAnswer extends TrialsFound {
  readonly kind: 'ok';
}

export interface FigurePayload {
  readonly figure: FigureKey;
  /** Plate or material; `""` or absent for the shop */
  readonly of?: string | undefined;
  /** Initials, for the journal */
  readonly who?: string | undefined;
}

export interface WayBackPayload extends FigurePayload {
  /** The journal's entry that is to be taken back: a second click must not take back another. */
  readonly entry: string;
}

/** The trials after a figure was put in use or taken back. */
export interface FigureChanged extends TrialsAnswer {
  /** `before` when the cells were like that already and nothing was written now. */
  readonly changed: 'now' | 'before';
}

/** Every verb that a page calls: what it takes and what it answers. */
interface Verbs extends BooksVerbs, QuoteVerbs, StockVerbs {
  readonly planSelectedOrder: { readonly payload: PlanPayload; readonly answer: PlanAnswer };
  readonly makeRunSheet: { readonly payload: OrderPayload; readonly answer: RunSheetMade };
  readonly printRunSheet: { readonly payload: RunPayload; readonly answer: RunSheetShown };
  readonly runSheetDocumentFor: { readonly payload: RunPayload; readonly answer: DocumentAnswer };
  readonly showHeat: { readonly payload: OrderPayload; readonly answer: HeatShown };
  readonly heatPicturesFor: { readonly payload: OrderPayload; readonly answer: HeatPictures };
  readonly startLog: { readonly payload: OrderPayload; readonly answer: LogForm };
  readonly readTrials: {
    readonly payload: Readonly<Record<string, never>>;
    readonly answer: TrialsAnswer;
  };
  readonly adoptFigure: { readonly payload: FigurePayload; readonly answer: FigureChanged };
  readonly revertFigure: { readonly payload: WayBackPayload; readonly answer: FigureChanged };
  readonly logOutcome: { readonly payload: OutcomePayload; readonly answer: OutcomeLogged };
}

export type Verb = keyof Verbs;
export type PayloadOf<V extends Verb> = Verbs[V]['payload'];
export type AnswerOf<V extends Verb> = Verbs[V]['answer'] | Refused;
