/** Before this a date is no date: a time alone counts from the last days of 1899. */
const FIRST_YEAR = '1900';

/**
 * Dates as text: a day as `yyyy-mm-dd` in the workbook's zone, a time alone as `hh:mm`. The platform is asked once for each different
 * value, since each question costs time.
 */
export function plainDates(zoneOf: () => string): (date: Date) => string {
  const known = new Map<number, string>();
  let zone: string | undefined;
  return (date) => {
    const instant = Number(date);
    const found = known.get(instant);
    if (found !== undefined) return found;
    zone ??= zoneOf();
    const [day = '', clock = ''] = Utilities.formatDate(
      new Date(instant),
      zone,
      'yyyy-MM-dd HH:mm',
    ).split(' ');
    const text = day < FIRST_YEAR ? clock : day;
    known.set(instant, text);
    return text;
  };
}
