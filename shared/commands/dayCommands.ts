import type { PourDay } from '../day/shop/pourDay.ts';
import type { ReplannedDay } from '../day/shop/replannedDay.ts';

export interface DayPayload {
  /** Order numbers, separated by commas; every open order when blank or absent. */
  readonly orders?: string | undefined;
  /** `yyyy-mm-dd`; today when blank or absent. */
  readonly firstDay?: string | undefined;
  /** How many days from the first on, 1 to 31; 5 when blank or absent. */
  readonly days?: string | undefined;
}

export interface DayAnswer extends PourDay {
  readonly kind: 'ok';
}

export interface ReplanAnswer extends ReplannedDay {
  readonly kind: 'ok';
  /** Ticked without a time: taken as done when planned, at the latest now. */
  readonly untimed: readonly string[];
  /** Ticked later than now: taken as done now. */
  readonly ahead: readonly string[];
}

/** Commands of the pour day. */
export interface DayCommands {
  readonly planDayFor: { readonly payload: DayPayload; readonly answer: DayAnswer };
  readonly replanDayFor: {
    readonly payload: Readonly<Record<string, never>>;
    readonly answer: ReplanAnswer;
  };
}

/** Whether a day on show follows ticks. */
export function isReplan(day: DayAnswer | ReplanAnswer): day is ReplanAnswer {
  return 'now' in day;
}
