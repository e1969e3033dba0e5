import { requireNumber } from '../errors/requireNumber.ts';

/** Surroundings that stepped, and a body following them. */
export interface LumpedStep {
  /** At the start [°C] */
  readonly start: number;
  /** Where the temperature is heading [°C] */
  readonly surroundings: number;
  /** [s], > 0 */
  readonly timeConstant: number;
}

/**
 * Temperature of a lumped body some time after its surroundings stepped.
 *
 * T = T_inf + (T0 - T_inf) exp(-t / tau)
 *
 * @param seconds - since the step [s], >= 0
 * @returns [°C]
 * @throws InputError on a time below 0 or a time constant not greater than 0
 * @source INCROPERA, section 5.1
 */
export function lumpedTemperature(step: LumpedStep, seconds: number): number {
  requireStep(step);
  requireNumber(seconds, 'time', { unit: 's', atLeast: 0 });
  const { start, surroundings } = step;
  return surroundings + (start - surroundings) * Math.exp(-seconds / step.timeConstant);
}

/** How long something takes, or that it never happens. */
export type TimeToReach =
  | { readonly kind: 'reached'; readonly seconds: number }
  | { readonly kind: 'unreachable'; readonly because: 'surroundings stop short of the target' };

/**
 * Time for a lumped body to heat or cool to a temperature.
 *
 * t = tau ln[(T_inf - T0) / (T_inf - T)]; 0 when the body starts at the target or beyond it, seen from the surroundings.
 *
 * @param target - [°C]
 * @returns seconds, or `unreachable` when the surroundings themselves stop at or short of the target
 * @throws InputError on a time constant not greater than 0
 * @source INCROPERA, section 5.1
 */
export function lumpedTime(step: LumpedStep, target: number): TimeToReach {
  requireStep(step);
  requireNumber(target, 'target temperature', { unit: 'degC' });
  const whole = step.start - step.surroundings;
  const left = target - step.surroundings;
  if (target === step.start) return { kind: 'reached', seconds: 0 };
  if (left === 0 || whole === 0 || Math.sign(left) !== Math.sign(whole))
    return { kind: 'unreachable', because: 'surroundings stop short of the target' };
  return { kind: 'reached', seconds: Math.max(0, step.timeConstant * Math.log(whole / left)) };
}

function requireStep({ start, surroundings, timeConstant: tau }: LumpedStep): void {
  requireNumber(start, 'start temperature', { unit: 'degC' });
  requireNumber(surroundings, 'surrounding temperature', { unit: 'degC' });
  requireNumber(tau, 'time constant', { unit: 's', greaterThan: 0 });
}
