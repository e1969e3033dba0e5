import { dayAfter } from '../book/reading/daysBetween.ts';
import { formatClock } from '../book/reading/parseClock.ts';
import type { UnitSystem } from '../units/measures.ts';

const HOUR = 3600;
const DAY = 24 * HOUR;
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** The days that a plan counts its seconds from, and how the shop writes a clock time. */
export interface DayFrame {
  /** `yyyy-mm-dd` */
  readonly firstDay: string;
  readonly system: UnitSystem;
}

/** Which day of the plan a moment lies in, 0 for the first. */
export function dayOf(seconds: number): number {
  return Math.floor(seconds / DAY);
}

/** A day of the plan as people say it: `Mon Nov 30`. */
export function dayText({ firstDay }: Pick<DayFrame, 'firstDay'>, day: number): string {
  const date = new Date(`${dayAfter(firstDay, day)}T00:00:00Z`);
  return `${WEEKDAYS[date.getUTCDay()]} ${MONTHS[date.getUTCMonth()]} ${date.getUTCDate()}`;
}

/** The time of day of a moment: `9:05 am`. */
export function dayClockText(seconds: number, system: UnitSystem): string {
  return formatClock((seconds - dayOf(seconds) * DAY) / 60, system);
}

/** A full hour of the day, as short as it goes: `9 am`, `9:00`. */
export function hourText(seconds: number, system: UnitSystem): string {
  const hour = Math.round((seconds - dayOf(seconds) * DAY) / HOUR);
  if (system === 'metric') return `${hour}:00`;
  return `${hour % 12 === 0 ? 12 : hour % 12} ${hour < 12 ? 'am' : 'pm'}`;
}

/** A moment with its day: `Mon Nov 30, 9:05 am`. */
export function momentText(seconds: number, frame: DayFrame): string {
  return `${dayText(frame, dayOf(seconds))}, ${dayClockText(seconds, frame.system)}`;
}
