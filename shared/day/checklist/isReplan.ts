import type { DayAnswer, ReplanAnswer } from '../../commands/dayVerbs.ts';

/** Whether a day on show follows ticks. */
export function isReplan(day: DayAnswer | ReplanAnswer): day is ReplanAnswer {
  return 'now' in day;
}
