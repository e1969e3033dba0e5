import { dayAfter, daysBetween } from '../../book/reading/daysBetween.ts';
import { type ShareTrend, shareTrend } from '../../quality/charts/shareTrend.ts';
import { yieldRate } from '../../quality/yieldRate.ts';
import type { LoggedRound } from './loggedRounds.ts';

/** Weeks that a trend is looked for in. */
const WEEKS = 8;

const CONFIDENCE = 0.95;
/** A Monday. */
const FIRST_MONDAY = '2024-01-01';

/** Pieces of one week; the interval is absent where nothing was poured. */
export interface WeekYield {
  /** Its Monday, `yyyy-mm-dd`. */
  readonly from: string;
  readonly rounds: number;
  readonly poured: number;
  readonly good: number;
  readonly interval?: { readonly low: number; readonly high: number };
}

export interface Weeks {
  /** The week of the day asked for, last; before it the weeks before, without those from before the first entry. */
  readonly weeks: readonly WeekYield[];
  readonly trend?: ShareTrend;
  /** Rounds of these weeks. */
  readonly rounds: readonly LoggedRound[];
}

/**
 * Yields of the last weeks, Monday to Sunday, and whether they rise or fall.
 * @param day - `yyyy-mm-dd`; later rounds are left out
 */
export function weekYields(all: readonly LoggedRound[], day: string): Weeks {
  const monday = mondayOf(day);
  const dated = all.flatMap((round) => {
    if (round.day === undefined || round.day > day) return [];
    const week = WEEKS - 1 - daysBetween(mondayOf(round.day), monday) / 7;
    return week < 0 ? [] : [{ round, week }];
  });
  const first = Math.min(WEEKS - 1, ...dated.map(({ week }) => week));
  const weeks = Array.from({ length: WEEKS - first }, (_, index) =>
    weekOf(
      dayAfter(monday, (first + index - WEEKS + 1) * 7),
      dated.filter(({ week }) => week === first + index).map(({ round }) => round),
    ),
  );
  const trend = shareTrend(weeks.map(({ poured, good }) => ({ poured, bad: poured - good })));
  return {
    weeks,
    rounds: dated.map(({ round }) => round),
    ...(trend === undefined ? {} : { trend }),
  };
}

function weekOf(from: string, rounds: readonly LoggedRound[]): WeekYield {
  const poured = rounds.reduce((sum, round) => sum + round.poured, 0);
  const good = rounds.reduce((sum, round) => sum + round.good, 0);
  const sums = { from, rounds: rounds.length, poured, good };
  if (poured === 0) return sums;
  const { low, high } = yieldRate(good, poured, CONFIDENCE);
  return { ...sums, interval: { low, high } };
}

function mondayOf(day: string): string {
  const since = daysBetween(FIRST_MONDAY, day);
  return dayAfter(day, -(((since % 7) + 7) % 7));
}
