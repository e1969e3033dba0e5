import { InputError } from '../../errors/InputError.ts';
import type { UnitSystem } from '../../units/measures.ts';

const MINUTES_A_DAY = 24 * 60;

/**
 * Minutes after midnight from a time typed as text.
 * @param value `9:30`, `09:30`, `9:30 am`, `1:15 PM`, `9 am`, or a spreadsheet time (fraction of a day)
 * @returns minutes after midnight [min], 0 to 1439
 * @throws InputError when it is none of these
 */
export function parseClock(value: string | number | boolean, field: string): number {
  if (typeof value === 'number' && value >= 0 && value < 1)
    return Math.round(value * MINUTES_A_DAY) % MINUTES_A_DAY;
  const match = /^(\d{1,2})(?::(\d\d))?(?::00)?\s*([ap])?\.?(?:m\.?)?$/i.exec(String(value).trim());
  const hour = Number(match?.[1]);
  const minute = Number(match?.[2] ?? 0);
  const half = match?.[3]?.toLowerCase();
  const isBareNumber = match !== null && match[2] === undefined && half === undefined;
  const isHour = half ? hour >= 1 && hour <= 12 : hour <= 23;
  if (match === null || isBareNumber || !isHour || minute > 59)
    throw new InputError({
      field,
      rule: { kind: 'form', wanted: 'a time such as 9:30 or 1:15 pm' },
      value,
    });
  if (!half) return hour * 60 + minute;
  return ((hour % 12) + (half === 'p' ? 12 : 0)) * 60 + minute;
}

/**
 * A time of day as people write it; days before or after are named.
 * @param minutes after midnight of the day of the run [min]; may be negative or past midnight
 */
export function formatClock(minutes: number, system: UnitSystem): string {
  const whole = Math.floor(minutes);
  const day = Math.floor(whole / MINUTES_A_DAY);
  const inDay = whole - day * MINUTES_A_DAY;
  const hour = Math.floor(inDay / 60);
  const minute = String(inDay % 60).padStart(2, '0');
  const clock =
    system === 'metric'
      ? `${hour}:${minute}`
      : `${hour % 12 === 0 ? 12 : hour % 12}:${minute} ${hour < 12 ? 'am' : 'pm'}`;
  if (day === 0) return clock;
  return `${clock} ${day < 0 ? 'the day before' : 'the next day'}`;
}
