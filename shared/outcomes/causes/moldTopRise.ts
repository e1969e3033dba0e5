import type { MoldCourse, MoldReading } from '../../heat/solver/moldCourse.ts';

/** A mold this near to where it settles is taken as held [K]. */
const SETTLED = 1;

/**
 * The mold from its reading at the first pour on: it goes where the plan's climb goes, in the same time.
 *
 * T(t) = end + (reading - end) (climb(t) - end) / (climb(0) - end): a block that nears its plate's balance does so at one
 * rate, from wherever it starts. A plate that was off, or set otherwise than planned, is not in it.
 *
 * @param climb - of the plan, from its target on, in order of time
 * @param reading - mold top at the first pour [degC]
 */
export function moldTopRise(climb: readonly MoldReading[], reading: number): MoldCourse {
  const start = climb[0]?.temperature ?? reading;
  const end = climb[climb.length - 1]?.temperature ?? reading;
  if (Math.abs(start - end) < SETTLED) return reading;
  return climb.map(({ time, temperature }) => ({
    time,
    temperature: end + ((reading - end) * (temperature - end)) / (start - end),
  }));
}
