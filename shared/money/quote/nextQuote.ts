/**
 * The next free number of a quote: `Q-2026-001`, counted up in each year.
 * @param taken - every number that was ever given
 * @param day - `yyyy-mm-dd`
 */
export function nextQuote(taken: readonly (string | undefined)[], day: string): string {
  const year = day.slice(0, 4);
  const counts = taken.map((quote) => {
    const [, of, count] = /^Q-(\d{4})-(\d{1,9})$/i.exec((quote ?? '').trim()) ?? [];
    return of === year ? Number(count) : 0;
  });
  const next = counts.reduce((most, count) => Math.max(most, count), 0) + 1;
  return `Q-${year}-${String(next).padStart(3, '0')}`;
}

/** The next free number of an order: one above the highest that is a plain number. */
export function nextOrder(taken: readonly (string | undefined)[]): string {
  const numbers = taken.map((order) =>
    /^\d{1,12}$/.test((order ?? '').trim()) ? Number(order) : 0,
  );
  return String(numbers.reduce((most, number) => Math.max(most, number), 0) + 1);
}

/**
 * The day so many days later, `yyyy-mm-dd`.
 * @param day - `yyyy-mm-dd`
 */
export function daysLater(day: string, days: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, date + days)).toISOString().slice(0, 10);
}
