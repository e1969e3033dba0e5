import { requireGreater } from '../../errors/requireGreater.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import { absorbedPower, type Body, heatNeeded } from '../microwaveTime.ts';
import type { MeasuredFigure } from './setTemperatureFromPucks.ts';

/** Weigh, heat from cold, stir, read. */
export interface WeighedMinute {
  /** Plastisol and cup */
  readonly bodies: readonly Body[];
  /** Before and after [°C], after above before */
  readonly start: number;
  readonly end: number;
  /** With the oven on [s], > 0 */
  readonly seconds: number;
  /** [W], > 0 */
  readonly ratedPower: number;
  /** Standard deviations of one temperature [K], > 0, of the time [s], >= 0, and of the whole mass as a share, >= 0 */
  readonly temperatureError: number;
  readonly timeError: number;
  readonly massShareError: number;
}

/**
 * Share of a microwave's rated output that reaches the cup, from one weighed heating.
 *
 * eta = sum(m c) dT / (P t); relative error: root of 2 (s_T / dT)^2 + (s_t / t)^2 + s_m^2. The specific heat's own error is
 * not in it: it cancels when the same figure plans the heating. What the cup loses meanwhile counts as not absorbed.
 *
 * @returns fraction
 * @throws InputError on a figure out of range, an end not above the start, or more heat than the rated output gives
 * @source OPENSTAXPHYSICS, section 14.2; errors by first order
 */
export function microwaveEfficiency(trial: WeighedMinute): MeasuredFigure {
  const { start, end, seconds, ratedPower } = trial;
  requireNumber(start, 'start temperature', { unit: 'degC' });
  requireNumber(end, 'end temperature', { unit: 'degC' });
  requireNumber(ratedPower, 'rated power', { unit: 'W', greaterThan: 0 });
  const differenceC = { unit: 'differenceC', greaterThan: 0 } as const;
  requireNumber(trial.temperatureError, 'error of a reading', differenceC);
  requireNumber(trial.timeError, 'error of the heating time', { unit: 's', atLeast: 0 });
  requireNumber(trial.massShareError, 'error of the mass', { atLeast: 0 });
  const cold = { field: 'start temperature', value: start };
  requireGreater({ field: 'end temperature', value: end }, cold, 'degC');
  const heat = heatNeeded(trial.bodies, end - start);
  const value = absorbedPower(heat, seconds) / ratedPower;
  requireNumber(value, 'microwave efficiency', { atMost: 1 });
  const share = Math.hypot(
    (Math.SQRT2 * trial.temperatureError) / (end - start),
    trial.timeError / seconds,
    trial.massShareError,
  );
  return { value, standardError: value * share };
}
