import { requireGreater } from '../errors/requireGreater.ts';
import { requireNumber } from '../errors/requireNumber.ts';
import { DEFAULTS } from '../material/defaults.ts';

export interface Body {
  /** [kg], >= 0 */
  readonly mass: number;
  /** [J/(kg K)], > 0 */
  readonly specificHeat: number;
}

/**
 * Heat that bodies take up together: Q = sum(m c) dT.
 * @param rise - [K]
 * @returns [J]
 * @throws InputError on a mass below 0 or a specific heat not greater than 0
 * @source OPENSTAXPHYSICS, section 14.2
 */
export function heatNeeded(bodies: readonly Body[], rise: number): number {
  requireNumber(rise, 'temperature rise', { unit: 'differenceC' });
  for (const { mass, specificHeat } of bodies) {
    requireNumber(mass, 'mass', { unit: 'kg', atLeast: 0 });
    requireNumber(specificHeat, 'specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  }
  return bodies.reduce((sum, { mass, specificHeat }) => sum + mass * specificHeat, 0) * rise;
}

/**
 * Power that ends up in a load, from a weighed trial: P = Q / t. Over the rated output it is the oven's efficiency.
 * @param heat - taken up [J], > 0
 * @param seconds - of heating [s], > 0
 * @returns [W]
 * @throws InputError when either is not greater than 0
 * @source IEC60705, the water-load method
 */
export function absorbedPower(heat: number, seconds: number): number {
  requireNumber(heat, 'heat taken up', { unit: 'J', greaterThan: 0 });
  requireNumber(seconds, 'heating time', { unit: 's', greaterThan: 0 });
  return heat / seconds;
}

export interface MicrowaveLoad {
  /** Plastisol and cup */
  readonly bodies: readonly Body[];
  /** [°C] */
  readonly start: number;
  /** Above the start [°C] */
  readonly end: number;
  /** Rated output of the oven [W], > 0 */
  readonly ratedPower: number;
  /** Share of the rated output that reaches the cup, > 0, at most 1 */
  readonly efficiency?: number;
  /** One burst, then stir and rest [s], > 0 and >= 0 */
  readonly burst: number;
  readonly rest: number;
}

export interface MicrowavePlan {
  /** Into plastisol and cup [J] */
  readonly heat: number;
  /** With the oven on [s] */
  readonly heating: number;
  readonly bursts: number;
  /** With the rests between bursts [s] */
  readonly elapsed: number;
}

/**
 * Microwave time for a cup, in bursts, from the heat it must take up.
 *
 * t = sum(m c) dT / (eta P); bursts = ceil(t / burst), a rest between each two. Heat lost meanwhile is left out.
 * A guide to set the timer by, never a substitute for stirring and reading: losses rise with temperature and spots run
 * away. The efficiency is the weak figure; a weighed minute from cold gives the oven's own.
 *
 * @throws InputError on a figure out of range, or an end not above the start
 * @source OPENSTAXPHYSICS, section 14.2
 */
export function microwaveTime(load: MicrowaveLoad): MicrowavePlan {
  const { start, end, ratedPower, burst, rest } = load;
  const { efficiency = DEFAULTS.microwaveEfficiency.value } = load;
  requireNumber(start, 'start temperature', { unit: 'degC' });
  requireNumber(end, 'cook temperature', { unit: 'degC' });
  requireNumber(ratedPower, 'rated power', { unit: 'W', greaterThan: 0 });
  requireNumber(efficiency, 'microwave efficiency', { greaterThan: 0, atMost: 1 });
  requireNumber(burst, 'burst', { unit: 's', greaterThan: 0 });
  requireNumber(rest, 'rest', { unit: 's', atLeast: 0 });
  const from = { field: 'start temperature', value: start };
  requireGreater({ field: 'cook temperature', value: end }, from, 'degC');
  const heat = heatNeeded(load.bodies, end - start);
  const heating = heat / (efficiency * ratedPower);
  const bursts = Math.ceil(heating / burst);
  return { heat, heating, bursts, elapsed: heating + Math.max(0, bursts - 1) * rest };
}
