import { requireNumber } from '../errors/requireNumber.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { findRoot } from './findRoot.ts';
import { type MoldOnPlate, moldBalance, moldPlateau } from './moldOnPlate.ts';

export interface CoolDown {
  /** Its loss coefficient is that of still air or of a fan; no plate conductance stands for an insulating board */
  readonly mold: MoldOnPlate;
  /** Of the cold plate, when the mold stands on one [°C] */
  readonly plateTemperature?: number;
  /** Mold as it leaves the hot plate [°C] */
  readonly moldStart: number;
  /** Mean of the casting then [°C], at least the mold's */
  readonly castingStart: number;
  /** From metal to the middle of a closed cavity, or to the free surface of an open one [m], > 0 */
  readonly castingDepth: number;
  /** Of a cavity that is no slab, on its time constant, > 0; see `cavityShapeFactor`. 1 when left out */
  readonly shapeFactor?: number;
  /** Mean of the casting at which it keeps its shape [°C] */
  readonly demoldTemperature?: number;
  readonly conductivity?: number;
  /** Of the plastic [kg/m3], > 0 */
  readonly castingDensity?: number;
  readonly castingSpecificHeat?: number;
}

export type CoolTime =
  | {
      readonly kind: 'reached';
      readonly seconds: number;
      /** The slower of the two, which a change must speed up: the metal, or the plastic in it */
      readonly governs: 'mold' | 'casting';
      readonly moldTimeConstant: number;
      readonly castingTimeConstant: number;
    }
  | {
      readonly kind: 'unreachable';
      readonly because: 'surroundings not below the demold temperature';
      /** Where mold and casting settle [°C] */
      readonly settled: number;
    };

/** (pi / 2)^2: the slowest term of a slab cooled on one face. */
const SLOWEST = (Math.PI / 2) ** 2;

/**
 * Time off the hot plate until pieces may come out: a casting that follows its mold, a mold that follows the room.
 *
 * Mold: T_m = T_inf + (T_m0 - T_inf) exp(-t / tau_m), tau_m as in `moldBalance`. Casting, mean: tau_c dT_c/dt = T_m - T_c,
 * tau_c = F L^2 / (2.467 alpha). Solved together exactly. The core stays warmer than the mean; a thick nose wants longer.
 *
 * @returns seconds and which of the two governs, or `unreachable` when the surroundings are too warm
 * @throws InputError on a figure out of range, or a casting colder than its mold
 * @source INCROPERA, sections 5.1 and 5.5
 */
export function coolToDemold(cooling: CoolDown): CoolTime {
  const { moldStart, castingStart } = cooling;
  const { demoldTemperature = DEFAULTS.demoldTemperature.value } = cooling;
  requireNumber(moldStart, 'mold temperature', { unit: 'degC' });
  requireNumber(castingStart, 'casting temperature', { unit: 'degC', atLeast: moldStart });
  requireNumber(demoldTemperature, 'demold temperature', { unit: 'degC' });
  const { settled, mold, casting } = timeConstants(cooling);
  if (settled >= demoldTemperature) {
    const because = 'surroundings not below the demold temperature';
    return { kind: 'unreachable', because, settled };
  }
  const lags = { settled, mold, casting, moldStart, castingStart };
  const excess = (seconds: number) => castingTemperature(seconds, lags) - demoldTemperature;
  const seconds = excess(0) <= 0 ? 0 : findRoot(excess, 0, firstBelow(excess, mold + casting));
  return {
    kind: 'reached',
    seconds,
    governs: mold >= casting ? 'mold' : 'casting',
    moldTimeConstant: mold,
    castingTimeConstant: casting,
  };
}

function timeConstants(cooling: CoolDown) {
  const {
    conductivity = DEFAULTS.conductivity.value,
    castingDensity = DEFAULTS.hotDensity.value,
    castingSpecificHeat = DEFAULTS.specificHeat.value,
    castingDepth,
    shapeFactor = 1,
  } = cooling;
  requireNumber(castingDepth, 'casting depth', { unit: 'm', greaterThan: 0 });
  requireNumber(shapeFactor, 'shape factor', { greaterThan: 0 });
  requireNumber(conductivity, 'conductivity', { unit: 'WPerMK', greaterThan: 0 });
  requireNumber(castingDensity, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(castingSpecificHeat, 'specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  const balance = moldBalance({ contactConductance: 0, ...cooling.mold });
  const { plateTemperature = balance.roomTemperature } = cooling;
  const diffusivity = conductivity / (castingDensity * castingSpecificHeat);
  return {
    settled: moldPlateau(balance, plateTemperature),
    mold: balance.timeConstant,
    casting: (shapeFactor * castingDepth ** 2) / (SLOWEST * diffusivity),
  };
}

interface Lags {
  readonly settled: number;
  readonly mold: number;
  readonly casting: number;
  readonly moldStart: number;
  readonly castingStart: number;
}

function castingTemperature(seconds: number, lags: Lags): number {
  const { settled, mold, casting } = lags;
  const slow = lags.moldStart - settled;
  const own = lags.castingStart - settled;
  const decay = Math.exp(-seconds / casting);
  // Equal lags are the limit of the general form, which divides by their difference.
  if (Math.abs(mold - casting) < 1e-6 * mold)
    return settled + (own + (slow * seconds) / casting) * decay;
  const follow = (slow * mold) / (mold - casting);
  return settled + follow * Math.exp(-seconds / mold) + (own - follow) * decay;
}

function firstBelow(excess: (seconds: number) => number, guess: number): number {
  let seconds = guess;
  while (excess(seconds) > 0) seconds *= 2;
  return seconds;
}
