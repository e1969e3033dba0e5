const DAY = 86_400_000;

/**
 * Days from one calendar day to another; below 0 when the other is earlier.
 * @param from `yyyy-mm-dd`
 * @param to `yyyy-mm-dd`
 */
export function daysBetween(from: string, to: string): number {
  return (dayNumber(to) - dayNumber(from)) / DAY;
}

/** The calendar day so many days after another. */
export function dayAfter(day: string, days: number): string {
  return new Date(dayNumber(day) + days * DAY).toISOString().slice(0, 10);
}

function dayNumber(day: string): number {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return Date.UTC(year, month - 1, date);
}
