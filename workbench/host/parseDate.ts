const DAY = 86_400_000;

/** Serial number of 1970-01-01 in the sheet's calendar, which counts days from 1899-12-30. */
const EPOCH_SERIAL = 25_569;

/** Wall-clock milliseconds of an instant in a zone, as if the zone were UTC. */
function wallClock(instant: number, zone: string): number {
  const part = parts(instant, zone);
  const { year, month, day, hour, minute, second } = part;
  const ms = ((instant % 1000) + 1000) % 1000;
  const date = new Date(Date.UTC(2000, month - 1, day, hour, minute, second, ms));
  // Date.UTC reads years below 100 as 19xx.
  date.setUTCFullYear(year, month - 1, day);
  return date.getTime();
}

function parts(instant: number, zone: string) {
  const found = new Map(
    formatter(zone)
      .formatToParts(instant)
      .map((part) => [part.type, part.value]),
  );
  const read = (name: Intl.DateTimeFormatPartTypes) => Number(found.get(name));
  return {
    year: read('year'),
    month: read('month'),
    day: read('day'),
    hour: read('hour'),
    minute: read('minute'),
    second: read('second'),
  };
}

const formatters = new Map<string, Intl.DateTimeFormat>();

function formatter(zone: string): Intl.DateTimeFormat {
  const known = formatters.get(zone);
  if (known) return known;
  const made = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  formatters.set(zone, made);
  return made;
}

/** The instant [ms since 1970] that a sheet serial means in the sheet's zone. */
export function serialToInstant(serial: number, zone: string): number {
  const wall = Math.round((serial - EPOCH_SERIAL) * DAY);
  const guess = wall - (wallClock(wall, zone) - wall);
  // The offset at the guess differs from the first one only next to a clock change.
  return wall - (wallClock(guess, zone) - guess);
}

/** The sheet serial of an instant [ms since 1970] in the sheet's zone. */
export function instantToSerial(instant: number, zone: string): number {
  return wallClock(instant, zone) / DAY + EPOCH_SERIAL;
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const LONG_MONTHS = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
];
const DAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];

/** Formats an instant as `Utilities.formatDate` does: the letters y M d H h m s S a E of SimpleDateFormat. */
export function formatDate(instant: number, zone: string, pattern: string): string {
  const wall = new Date(wallClock(instant, zone));
  return pattern.replace(/'((?:[^']|'')*)'|([A-Za-z])\2*/g, (token, quoted?: string) => {
    if (quoted === undefined) return dateField(wall, token);
    return quoted === '' ? "'" : quoted.replace(/''/g, "'");
  });
}

/**
 * The instant that a text means in a zone, as `Utilities.parseDate` reads it: the letters y M d H m s, all in digits.
 *
 * @throws Error when the text does not follow the pattern
 */
export function parseDate(text: string, zone: string, pattern: string): number {
  const letters: string[] = [];
  const form = pattern.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/([A-Za-z])\1*/g, (token) => {
    if (!/^(y+|M{1,2}|d+|H+|m+|s+)$/.test(token))
      throw new Error(`Utilities.parseDate: the workbench does not know the pattern "${token}"`);
    letters.push(token.charAt(0));
    return '(\\d+)';
  });
  const digits = new RegExp(`^${form}$`).exec(text)?.slice(1).map(Number);
  if (!digits) throw new Error(`Invalid argument: ${text}`);
  const read = (letter: string, absent: number) => digits[letters.indexOf(letter)] ?? absent;
  const days = Date.UTC(read('y', 1970), read('M', 1) - 1, read('d', 1));
  const wall = days + ((read('H', 0) * 60 + read('m', 0)) * 60 + read('s', 0)) * 1000;
  return serialToInstant(wall / DAY + EPOCH_SERIAL, zone);
}

function dateField(wall: Date, token: string): string {
  const pad = (value: number) => String(value).padStart(token.length, '0');
  switch (token[0]) {
    case 'y':
      return token.length === 2
        ? String(wall.getUTCFullYear()).slice(-2)
        : pad(wall.getUTCFullYear());
    case 'M':
      return monthField(wall, token.length);
    case 'd':
      return pad(wall.getUTCDate());
    case 'H':
      return pad(wall.getUTCHours());
    case 'h':
      return pad(wall.getUTCHours() % 12 || 12);
    case 'm':
      return pad(wall.getUTCMinutes());
    case 's':
      return pad(wall.getUTCSeconds());
    case 'S':
      return pad(wall.getUTCMilliseconds());
    case 'a':
      return wall.getUTCHours() < 12 ? 'AM' : 'PM';
    case 'E': {
      const name = DAYS[wall.getUTCDay()] ?? '';
      return token.length > 3 ? name : name.slice(0, 3);
    }
    default:
      throw new Error(`Utilities.formatDate: the workbench does not know the pattern "${token}"`);
  }
}

function monthField(wall: Date, length: number): string {
  const month = wall.getUTCMonth();
  if (length > 3) return LONG_MONTHS[month] ?? '';
  if (length === 3) return MONTHS[month] ?? '';
  return String(month + 1).padStart(length, '0');
}
