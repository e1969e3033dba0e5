/**
 * A span of a day's work as people say it, in whole minutes: `40 min`, `2 h`, `2 h 10 min`.
 * @param seconds - [s], >= 0; rounded up, so that late is never said to be in time
 */
export function hoursText(seconds: number): string {
  const minutes = Math.ceil(seconds / 60);
  const hours = Math.floor(minutes / 60);
  const rest = minutes - 60 * hours;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
