import { requireGreater } from '../../errors/requireGreater.ts';
import { requireNumber } from '../../errors/requireNumber.ts';

/** One reading of a mold. */
export interface MoldReading {
  /** Since the start of the run [s] */
  readonly time: number;
  /** Of the metal around the cavity [°C] */
  readonly temperature: number;
}

/** Temperature of the metal: held [°C], a function of time [s] to [°C], or readings in order of time. */
export type MoldCourse = number | ((time: number) => number) | readonly MoldReading[];

/**
 * A mold's temperature as a function of time: straight lines between readings, held before the first and after the last.
 *
 * @returns function of the time [s] giving [°C]; it throws when a given function answers with no number
 * @throws InputError on no reading, a figure that is no number, or times that do not increase
 */
export function moldAt(course: MoldCourse): (time: number) => number {
  if (typeof course === 'number') {
    requireNumber(course, 'mold temperature', { unit: 'degC' });
    return () => course;
  }
  if (typeof course === 'function') return (time) => checked(course(time));
  requireNumber(course.length, 'number of mold readings', { atLeast: 1 });
  course.forEach((reading, index) => {
    requireNumber(reading.time, 'time of mold reading', { unit: 's' });
    checked(reading.temperature);
    const before = course[index - 1];
    if (before === undefined) return;
    const earlier = { field: 'time of the reading before', value: before.time };
    requireGreater({ field: 'time of mold reading', value: reading.time }, earlier, 's');
  });
  return (time) => between(course, time);
}

function checked(temperature: number): number {
  requireNumber(temperature, 'mold temperature', { unit: 'degC' });
  return temperature;
}

function between(readings: readonly MoldReading[], time: number): number {
  const next = readings.findIndex((reading) => reading.time > time);
  const after = readings[next];
  const before = readings[next === -1 ? readings.length - 1 : next - 1];
  if (before === undefined) return after?.temperature ?? Number.NaN;
  if (after === undefined) return before.temperature;
  const share = (time - before.time) / (after.time - before.time);
  return before.temperature + share * (after.temperature - before.temperature);
}
