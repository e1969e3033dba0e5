/**
 * A clock time as a time field holds it: `09:30`.
 * @param minutes - after midnight [min], 0 to 1439
 */
export function clockField(minutes: number | undefined): string {
  if (minutes === undefined) return '';
  const hour = String(Math.floor(minutes / 60)).padStart(2, '0');
  return `${hour}:${String(minutes % 60).padStart(2, '0')}`;
}
