import { dayAfter, daysBetween } from '../../shared/book/reading/daysBetween.ts';
import { parseClock } from '../../shared/book/reading/parseClock.ts';
import { dayOf } from '../../shared/words/momentText.ts';

const DAY = 86_400;
const FORM = 'yyyy-MM-dd HH:mm:ss';

/** Clock and calendar of the workbook's zone as seconds from midnight before a day, and back: what a clock on the wall shows. */
export interface WallClock {
  readonly toDate: (seconds: number) => Date;
  /** A date, or a time alone on the day given; undefined for what is neither. */
  readonly toSeconds: (cell: unknown, day: number) => number | undefined;
}

export function wallClock(firstDay: string, zone: string): WallClock {
  const hours = new Map<string, number>();
  // Clocks change at full hours, so that the platform need be asked once an hour only, not once a moment.
  const hourStart = (text: string): number => {
    const known = hours.get(text) ?? Utilities.parseDate(text, zone, FORM).getTime();
    hours.set(text, known);
    return known;
  };
  return {
    toDate: (seconds) => {
      const whole = Math.floor(seconds);
      const rest = whole - dayOf(whole) * DAY;
      const [hour, minute, second] = [rest / 3600, (rest / 60) % 60, rest % 60].map((part) =>
        String(Math.floor(part)).padStart(2, '0'),
      );
      const day = dayAfter(firstDay, dayOf(whole));
      const start = hourStart(`${day} ${hour}:00:00`);
      return new Date(start + (Number(minute) * 60 + Number(second)) * 1000);
    },
    toSeconds: (cell, day) => {
      if (Object.prototype.toString.call(cell) !== '[object Date]') return typedClock(cell, day);
      const text = Utilities.formatDate(cell as Date, zone, FORM); // checked on the line above
      const [date = '', clock = ''] = text.split(' ');
      const [hour = 0, minute = 0, second = 0] = clock.split(':').map(Number);
      // A time without a date counts from the last days of 1899.
      const days = date < '1900' ? day : daysBetween(firstDay, date);
      return days * DAY + hour * 3600 + minute * 60 + second;
    },
  };
}

/** A time typed as text, `9:40`. */
function typedClock(cell: unknown, day: number): number | undefined {
  if (typeof cell !== 'string' && typeof cell !== 'number') return undefined;
  if (cell === '') return undefined;
  try {
    return day * DAY + parseClock(cell, 'done at') * 60;
  } catch {
    // Anybody may write anything there: a tick whose time cannot be read has none, and the panel says so.
    return undefined;
  }
}
