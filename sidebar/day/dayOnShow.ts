import type { DayForm } from '../../shared/commands/checklistCommands.ts';
import type { DayAnswer, ReplanAnswer } from '../../shared/commands/dayCommands.ts';

/** The pour day as it is on show. */
export interface DayOnShow {
  readonly form: DayForm;
  /** As chosen */
  readonly orders: readonly string[];
  readonly firstDay: string;
  readonly days: string;
  /** The plan of what is chosen, or the replan; undefined before and after a choice was changed. */
  readonly answer: DayAnswer | ReplanAnswer | undefined;
  /** Day of the plan whose bars are drawn, from 0; all where it is undefined. */
  readonly drawnDay: number | undefined;
  /** Whose list is on show; "" for the first. */
  readonly person: string;
}
