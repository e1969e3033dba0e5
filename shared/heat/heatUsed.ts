import { requireNumber } from '../errors/requireNumber.ts';
import { DEFAULTS } from '../material/defaults.ts';

/** Temperature at which heat history is counted one for one [°C]. */
export const HEAT_REFERENCE = 170;

const GAS_CONSTANT = 8.314462618; // J/(mol K), exact in the SI of 2019
const ABSOLUTE_ZERO = -273.15; // °C
/** Widest piece of a ramp taken as one Simpson step [K]; leaves under 1 part in 10 000. */
const RAMP_STEP = 5;

/** A stretch at one temperature, or rising or falling evenly between two. */
export interface HeatStretch {
  /** [°C], above -273.15 */
  readonly from: number;
  readonly to: number;
  /** [s], >= 0 */
  readonly seconds: number;
}

/**
 * How much faster plastisol ages at a temperature than at 170 °C.
 *
 * exp[-(Ea / R) (1 / T - 1 / T_ref)], kelvin: doubles about every 7.7 K near 175 °C. Fitted between 160 and 220 °C.
 *
 * @param temperature - [°C], above -273.15
 * @param activationEnergy - [J/mol], > 0
 * @returns pure number, 1 at 170 °C
 * @throws InputError on a figure out of range
 * @source PVCAGEING, apparent activation energy
 */
export function heatRate(
  temperature: number,
  activationEnergy: number = DEFAULTS.activationEnergy.value,
): number {
  requireNumber(temperature, 'temperature', { unit: 'degC', greaterThan: ABSOLUTE_ZERO });
  requireNumber(activationEnergy, 'activation energy', { greaterThan: 0 });
  const inverse = 1 / (temperature - ABSOLUTE_ZERO) - 1 / (HEAT_REFERENCE - ABSOLUTE_ZERO);
  return Math.exp((-activationEnergy / GAS_CONSTANT) * inverse);
}

/**
 * Heat history of a cup over all its heatings and holds, as seconds at 170 °C: the integral of `heatRate` over time.
 *
 * A leftover takes its history with it. Mixing old stock with new averages the histories by mass, which the caller does.
 *
 * @param stretches - in any order; an empty list is a fresh cup
 * @returns equivalent seconds at 170 °C [s]
 * @throws InputError on a figure out of range
 * @source PVCAGEING, apparent activation energy
 */
export function heatUsed(
  stretches: readonly HeatStretch[],
  activationEnergy: number = DEFAULTS.activationEnergy.value,
): number {
  return stretches.reduce((sum, { from, to, seconds }) => {
    requireNumber(seconds, 'time at heat', { unit: 's', atLeast: 0 });
    return sum + seconds * meanRate(from, to, activationEnergy);
  }, 0);
}

function meanRate(from: number, to: number, activationEnergy: number): number {
  if (from === to) return heatRate(from, activationEnergy);
  const steps = Math.ceil(Math.abs(to - from) / RAMP_STEP);
  const width = (to - from) / steps;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) {
    const left = from + step * width;
    const middle = heatRate(left + width / 2, activationEnergy);
    sum += heatRate(left, activationEnergy) + 4 * middle + heatRate(left + width, activationEnergy);
  }
  return sum / (6 * steps);
}

export interface HeatLimits {
  /** Equivalent seconds at 170 °C, > 0 */
  readonly budget?: number;
  /** Never exceeded [°C] */
  readonly hardStop?: number;
}

/** Where a cup stands: within its budget, past it, or past the temperature that ends it at once. */
export type HeatVerdict =
  | { readonly kind: 'within budget'; readonly used: number; readonly left: number }
  | { readonly kind: 'over budget'; readonly used: number; readonly over: number }
  | { readonly kind: 'past the hard stop'; readonly used: number; readonly hottest: number };

/**
 * Heat history against the material's budget and its hard stop. The hard stop comes first, whatever is left of the budget.
 *
 * The budget is weak, a matter of the formulation; color and smoke overrule it, and the safety data sheet overrules both.
 *
 * @throws InputError on a figure out of range
 */
export function heatVerdict(
  stretches: readonly HeatStretch[],
  { budget = DEFAULTS.heatBudget.value, hardStop = DEFAULTS.hardStop.value }: HeatLimits = {},
  activationEnergy: number = DEFAULTS.activationEnergy.value,
): HeatVerdict {
  requireNumber(budget, 'heat budget', { unit: 's', greaterThan: 0 });
  requireNumber(hardStop, 'hard stop', { unit: 'degC' });
  const used = heatUsed(stretches, activationEnergy);
  const hottest = Math.max(ABSOLUTE_ZERO, ...stretches.map(({ from, to }) => Math.max(from, to)));
  if (hottest > hardStop) return { kind: 'past the hard stop', used, hottest };
  if (used > budget) return { kind: 'over budget', used, over: used - budget };
  return { kind: 'within budget', used, left: budget - used };
}
