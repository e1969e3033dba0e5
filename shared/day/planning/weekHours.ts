import { InputError } from '../../errors/InputError.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import type { Span } from '../../schedule/schedulingTypes.ts';

const DAY = 86_400;

/** One day's shift with its breaks, seconds after midnight [s]. */
export interface Shift extends Span {
  /** In order, inside the shift */
  readonly breaks?: readonly Span[];
}

/**
 * Hours over a number of days, one shift a day, breaks cut out; a day without a shift is closed.
 * @param shifts one per day of the week that the first day begins; used again from its start where there are more days
 * @param days whole, >= 1
 * @returns spans [s] from midnight before the first day
 * @throws InputError when a break lies outside its shift or before another
 */
export function weekHours(shifts: readonly (Shift | undefined)[], days: number): readonly Span[] {
  requireNumber(days, 'days', { whole: true, atLeast: 1 });
  return Array.from({ length: days }, (_, day) => shifts[day % shifts.length]).flatMap(
    (shift, day) =>
      shift
        ? withoutBreaks(shift).map(({ from, to }) => ({
            from: from + day * DAY,
            to: to + day * DAY,
          }))
        : [],
  );
}

function withoutBreaks({ from, to, breaks = [] }: Shift): readonly Span[] {
  const spans: Span[] = [];
  let start = from;
  for (const pause of breaks) {
    if (pause.from < start || pause.to <= pause.from || pause.to > to)
      throw new InputError({
        field: 'breaks',
        rule: { kind: 'form', wanted: 'in order and inside the shift' },
        value: [pause.from, pause.to],
        unit: 's',
      });
    if (pause.from > start) spans.push({ from: start, to: pause.from });
    start = pause.to;
  }
  if (start < to) spans.push({ from: start, to });
  return spans;
}

/** All moments at which at least one of them is there. */
export function anyHours(all: readonly (readonly Span[])[]): readonly Span[] {
  const spans = all.flat().sort((one, other) => one.from - other.from);
  const joined: Span[] = [];
  for (const { from, to } of spans) {
    const last = joined[joined.length - 1];
    if (last === undefined || from > last.to) joined.push({ from, to });
    else if (to > last.to) joined[joined.length - 1] = { from: last.from, to };
  }
  return joined;
}
