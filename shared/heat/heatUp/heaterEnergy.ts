import type { PlatePoint } from './followPlate.ts';
import { type Heater, type PlateRun, plateRates } from './plateRun.ts';

/**
 * Heat that the heater has fed by a moment of the course.
 *
 * Sum of power x time: its watts while on, nothing while off, what molds and room draw while it holds (mean of the two ends of
 * a step). A held plate feeds what flows into its molds.
 *
 * @param points - of the course, from its start; the last is held to the end
 * @param end - since the start of the course [s]
 * @returns [J]
 */
export function heaterEnergy(run: PlateRun, points: readonly PlatePoint[], end: number): number {
  let energy = 0;
  points.forEach((point, index) => {
    const next = points[index + 1];
    const until = Math.min(end, next?.time ?? end);
    if (until <= point.time) return;
    const powers = [point, next ?? point].map(({ state }) => powerOf(run, state, point.heater));
    energy += ((until - point.time) * ((powers[0] ?? 0) + (powers[1] ?? 0))) / 2;
  });
  return energy;
}

function powerOf(run: PlateRun, state: readonly number[], heater: Heater): number {
  if (heater === 'off') return 0;
  if (heater === 'on' && run.plate.kind === 'heated') return run.plate.watts;
  return plateRates(run, state, heater).drawn;
}
