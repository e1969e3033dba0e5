import { formatFixed, formatPlain } from '../units/formatPlain.ts';
import { MEASURES, type MeasureName, type UnitSystem } from '../units/measures.ts';
import { fromEngine } from '../units/toEngine.ts';
import { UNITS } from '../units/units.ts';

export type Rounding = 'up' | 'down' | 'nearest';

/** A value of the engine as the shop writes it: rounded, with its unit. `5.4 fl oz`, `270 °F`. */
export function quantityText(
  value: number,
  measure: MeasureName,
  system: UnitSystem,
  places: number,
): string {
  const unit = MEASURES[measure][system];
  const { label } = UNITS[unit];
  const number = formatFixed(fromEngine(value, unit), places);
  return label ? `${number} ${label}` : number;
}

/** A temperature [degC] in whole degrees. Limits are rounded toward the safe side by the caller's choice. */
export function temperatureText(
  value: number,
  system: UnitSystem,
  rounding: Rounding = 'nearest',
): string {
  const unit = MEASURES.temperature[system];
  return `${formatPlain(rounded(fromEngine(value, unit), 1, rounding))} ${UNITS[unit].label}`;
}

export function volumeText(value: number, system: UnitSystem): string {
  return quantityText(value, 'liquidVolume', system, system === 'US' ? 1 : 0);
}

/** A mass on the gram scale, in both systems: what the colorist reads off. */
export function gramsText(value: number): string {
  const grams = fromEngine(value, 'g');
  return `${formatFixed(grams, grams < 1 ? 2 : grams < 100 ? 1 : 0)} g`;
}

/** A share as per cent: `33 %`, `2.5 %`. */
export function shareText(value: number): string {
  // Seven hundredths times 100 is a hair above 7.
  const percent = Number((value * 100).toPrecision(12));
  return `${formatFixed(percent, percent < 10 && percent !== Math.round(percent) ? 1 : 0)} %`;
}

/**
 * A span of time as people say it: seconds below a minute and a half, then minutes and seconds, from ten minutes whole minutes.
 * @param seconds - [s], >= 0
 * @param rounding - `up` for an earliest time, `down` for a latest one, so that rounding never opens a window
 */
export function durationText(seconds: number, rounding: Rounding = 'nearest'): string {
  if (seconds >= 600) return `${rounded(seconds / 60, 1, rounding)} min`;
  const whole = rounded(seconds, seconds < 90 ? 1 : 5, rounding);
  if (whole < 90) return `${whole} s`;
  const minutes = Math.floor(whole / 60);
  const rest = whole - 60 * minutes;
  return rest === 0 ? `${minutes} min` : `${minutes} min ${rest} s`;
}

/** A moment of a run as a stopwatch shows it: `2:05`. @param seconds - [s], >= 0 */
export function stopwatchText(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** A number of things: `1 cup`, `3 cups`. */
export function countText(count: number, one: string, many = `${one}s`): string {
  return `${formatPlain(count)} ${count === 1 ? one : many}`;
}

/** How far a rounded amount is off, in whole per cent: ` (off by 9 %)`, or nothing where it rounds to none. */
export function deviationText(error: number): string {
  const percent = Math.round(Math.abs(error) * 100);
  return percent === 0 ? '' : ` (off by ${shareText(percent / 100)})`;
}

/** `salt`, `salt and mica`, `salt, mica and flake`. */
export function listText(items: readonly string[]): string {
  const last = items[items.length - 1] ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
}

/** To a multiple of `step`; a value that only misses a multiple by binary digits stays on it. */
export function rounded(value: number, step: number, rounding: Rounding): number {
  const steps = Number((value / step).toPrecision(12));
  if (rounding === 'up') return Math.ceil(steps) * step;
  if (rounding === 'down') return Math.floor(steps) * step;
  return Math.round(steps) * step;
}
