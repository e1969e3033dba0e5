import type { PiecesChange } from '../log/piecesChanges.ts';
import type { LoggedEntry } from '../log/rowToCorrect.ts';
import type { RunChoice } from '../log/runChoices.ts';
import type { RoundCauses } from '../outcomes/causes/roundCauses.ts';
import type { UnitSystem } from '../units/measures.ts';

interface LogPayload {
  readonly order: string;
  readonly firstPour?: string | undefined;
  /** Entry of the row to correct; a new round when absent. */
  readonly corrects?: string | undefined;
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
  /** Rows of the order that can be corrected, the last logged first. */
  readonly entries: readonly LoggedEntry[];
  /** The row that this form corrects, and what it holds, as it would be typed; absent for a new round. */
  readonly correction?: {
    readonly entry: LoggedEntry;
    readonly values: Readonly<Record<string, string>>;
  };
  /** Given anew to each form, so that an entry is written once however often it is sent. */
  readonly token: string;
}

export interface OutcomePayload {
  readonly order: string;
  readonly token: string;
  /** Entry of the row that this one replaces. */
  readonly corrects?: string | undefined;
  /** As typed, by the keys of the log's columns. */
  readonly values: Readonly<Record<string, string>>;
}

export interface OutcomeLogged {
  readonly kind: 'ok';
  /** `before` when the same entry had been written already and nothing was written now. */
  readonly logged: 'now' | 'before';
  /** Row of the log. */
  readonly row: number;
  /** Row of the log that it replaces. */
  readonly replaces?: number;
  readonly run: string;
  readonly order: string;
  readonly quantity: number;
  /** Good pieces logged for the order, this entry included. */
  readonly good: number;
  readonly status: string;
  readonly changes: readonly PiecesChange[];
  /** What likely went wrong; absent where nothing came out bad, and where nothing was written now. */
  readonly causes?: RoundCauses;
}

/** Commands of the log: what they take and what they answer. */
export interface LogCommands {
  readonly startLog: { readonly payload: LogPayload; readonly answer: LogForm };
  readonly logOutcome: { readonly payload: OutcomePayload; readonly answer: OutcomeLogged };
}
