import { linearScale, type Scale } from '../chart/linearScale.ts';
import type { TimetableDay } from './timetable.ts';

/** Between two days [px]. */
const DAY_GAP = 8;

/** A day's hours on paper [px]. */
export interface DayColumn extends TimetableDay {
  readonly left: number;
  readonly right: number;
  readonly x: Scale;
}

/**
 * Days side by side, an hour everywhere as wide; the closed hours between them are left out.
 * @param left, right - edges of the whole [px]
 */
export function dayColumns(
  days: readonly TimetableDay[],
  [left, right]: readonly [left: number, right: number],
): readonly DayColumn[] {
  const all = days.reduce((sum, { from, to }) => sum + (to - from), 0);
  const room = right - left - DAY_GAP * Math.max(0, days.length - 1);
  let start = left;
  return days.map((day) => {
    const width = all > 0 ? (room * (day.to - day.from)) / all : room / days.length;
    const column = { ...day, left: start, right: start + width };
    start += width + DAY_GAP;
    return { ...column, x: linearScale([day.from, day.to], [column.left, column.right]) };
  });
}

/** The parts of a span that the days show [px]; none where it lies in closed hours. */
export function partsShown(
  { from, to }: { readonly from: number; readonly to: number },
  columns: readonly DayColumn[],
): readonly (readonly [left: number, right: number])[] {
  return columns.flatMap((column) => {
    const [start, end] = [Math.max(from, column.from), Math.min(to, column.to)];
    return end > start ? [[column.x(start), column.x(end)] as const] : [];
  });
}

/** Where a moment stands; one in closed hours stands at the end of the day before. */
export function momentAt(moment: number, columns: readonly DayColumn[]): number {
  const before = columns.filter(({ from }) => from <= moment);
  const column = before[before.length - 1] ?? columns[0];
  if (column === undefined) return 0;
  return column.x(Math.min(Math.max(moment, column.from), column.to));
}
