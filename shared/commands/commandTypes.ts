import type { Refused } from '../errors/refuse.ts';
import type { RunSheetDocument } from '../paper/runSheet/runSheetTypes.ts';
import type { Picture } from '../pictures/pictureTypes.ts';
import type { PlanResult } from '../plan/planTypes.ts';
import type { FigureKey, TrialsFound } from '../trials/proposal.ts';
import type { BooksCommands } from './booksCommands.ts';
import type { CauseCommands } from './causeCommands.ts';
import type { ChecklistCommands } from './checklistCommands.ts';
import type { DayCommands } from './dayCommands.ts';
import type { LogCommands } from './logCommands.ts';
import type { QualityCommands } from './qualityCommands.ts';
import type { QuoteCommands } from './quoteCommands.ts';
import type { StockCommands } from './stockCommands.ts';
import type { TimerCommands } from './timerCommands.ts';

interface PlanPayload {
  /** The order on show; the selected row when absent. */
  readonly order?: string | undefined;
  /** Clock time of the first pour as typed; the row's own when absent. */
  readonly firstPour?: string | undefined;
}

interface PlanAnswer {
  readonly kind: 'ok';
  readonly plan: PlanResult;
}

export interface OrderPayload {
  readonly order: string;
  readonly firstPour?: string | undefined;
}

interface RunPayload extends OrderPayload {
  readonly runId: string;
}

interface RunSheetMade {
  readonly kind: 'ok';
  readonly runId: string;
  /** The order's status afterwards. */
  readonly status: string;
}

interface RunSheetShown {
  readonly kind: 'ok';
  readonly runId: string;
}

interface HeatShown {
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

interface DocumentAnswer {
  readonly kind: 'ok';
  readonly document: RunSheetDocument;
}

interface TrialsAnswer extends TrialsFound {
  readonly kind: 'ok';
}

export interface FigurePayload {
  readonly figure: FigureKey;
  /** Plate or material; `""` or absent for the shop */
  readonly of?: string | undefined;
  /** Initials, for the journal */
  readonly who?: string | undefined;
}

interface WayBackPayload extends FigurePayload {
  /** The journal's entry that is to be taken back: a second click must not take back another. */
  readonly entry: string;
}

/** The trials after a figure was put in use or taken back. */
export interface FigureChanged extends TrialsAnswer {
  /** `before` when the cells were like that already and nothing was written now. */
  readonly changed: 'now' | 'before';
}

/** Every command of a page: what it takes and what it answers. */
interface Commands
  extends BooksCommands,
    CauseCommands,
    ChecklistCommands,
    DayCommands,
    LogCommands,
    QualityCommands,
    QuoteCommands,
    StockCommands,
    TimerCommands {
  readonly planSelectedOrder: { readonly payload: PlanPayload; readonly answer: PlanAnswer };
  readonly makeRunSheet: { readonly payload: OrderPayload; readonly answer: RunSheetMade };
  readonly printRunSheet: { readonly payload: RunPayload; readonly answer: RunSheetShown };
  readonly runSheetDocumentFor: { readonly payload: RunPayload; readonly answer: DocumentAnswer };
  readonly showHeat: { readonly payload: OrderPayload; readonly answer: HeatShown };
  readonly heatPicturesFor: { readonly payload: OrderPayload; readonly answer: HeatPictures };
  readonly readTrials: {
    readonly payload: Readonly<Record<string, never>>;
    readonly answer: TrialsAnswer;
  };
  readonly adoptFigure: { readonly payload: FigurePayload; readonly answer: FigureChanged };
  readonly revertFigure: { readonly payload: WayBackPayload; readonly answer: FigureChanged };
}

export type CommandName = keyof Commands;
export type PayloadOf<Name extends CommandName> = Commands[Name]['payload'];
/** What a command answers when it is not refused. */
export type AnswerGiven<Name extends CommandName> = Commands[Name]['answer'];
export type AnswerOf<Name extends CommandName> = AnswerGiven<Name> | Refused;
