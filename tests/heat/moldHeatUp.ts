import { findRoot } from '../../shared/heat/findRoot.ts';
import { lumpedTemperature, lumpedTime } from '../../shared/heat/lumpedTime.ts';
import {
  type MoldBalance,
  type MoldOnPlate,
  moldBalance,
  moldPlateau,
} from '../../shared/heat/moldOnPlate.ts';

export interface HeatUp {
  readonly mold: MoldOnPlate;
  /** Of the plate's surface once warm [°C], above the room */
  readonly plateSetting: number;
  /** Of the mold at switch-on [°C]; the room's when left out */
  readonly startTemperature?: number;
  /** From switching the plate on at room temperature to its setting, a straight rise [s], >= 0; 0 for a warm plate */
  readonly plateWarmUp?: number;
}

export interface HeatUpResult {
  /** Where the mold top settles [°C] */
  readonly plateau: number;
  /** 63 % of the rise takes this long on a warm plate [s] */
  readonly timeConstant: number;
  readonly time:
    | { readonly kind: 'reached'; readonly seconds: number }
    | { readonly kind: 'unreachable' };
}

/**
 * How a mold heats up on a plate by a closed form, to hold the accurate path against: one loss coefficient stands for all
 * temperatures.
 *
 * t = tau ln[(T_inf - T0) / (T_inf - T)]; during a plate warm-up T = T_ramp(t) - r tau + (T0 - T_ramp(0) + r tau) e^(-t/tau).
 * Against `heatUpCourse` minutes are within 12 % while the target is at most 80 % of the rise to the plateau and within
 * 17 % at 90 %; nearer to the plateau the figure is no use.
 *
 * @param target - mold top [degC]
 * @source INCROPERA, section 5.1, with two surroundings
 */
export function moldHeatUp(heatUp: HeatUp, target: number): HeatUpResult {
  const course = prepare(heatUp);
  const { balance, plateau } = course;
  return { plateau, timeConstant: balance.timeConstant, time: timeTo(target, course) };
}

/** Temperature of the mold top [degC] some seconds after the plate was switched on. */
export function moldTemperature(heatUp: HeatUp, seconds: number): number {
  const course = prepare(heatUp);
  return temperatureAt(seconds, course);
}

interface Course {
  readonly balance: MoldBalance;
  readonly plateau: number;
  readonly start: number;
  readonly warmUp: number;
}

function prepare({ mold, plateSetting, startTemperature, plateWarmUp = 0 }: HeatUp): Course {
  const balance = moldBalance(mold);
  const start = startTemperature ?? balance.roomTemperature;
  const plateau = moldPlateau(balance, plateSetting);
  return { balance, plateau, start, warmUp: plateWarmUp };
}

function temperatureAt(seconds: number, { balance, plateau, start, warmUp }: Course): number {
  const { timeConstant, roomTemperature } = balance;
  if (seconds >= warmUp) {
    const atEnd = warmUp > 0 ? rampTemperature(warmUp) : start;
    const step = { start: atEnd, surroundings: plateau, timeConstant };
    return lumpedTemperature(step, seconds - warmUp);
  }
  return rampTemperature(seconds);

  function rampTemperature(time: number): number {
    const lag = ((plateau - roomTemperature) / warmUp) * timeConstant;
    const ramp = roomTemperature + (lag * time) / timeConstant;
    return ramp - lag + (start - roomTemperature + lag) * Math.exp(-time / timeConstant);
  }
}

function timeTo(target: number, course: Course): HeatUpResult['time'] {
  const { balance, plateau, start, warmUp } = course;
  if (start >= target) return { kind: 'reached', seconds: 0 };
  const afterWarmUp = temperatureAt(warmUp, course);
  if (afterWarmUp >= target) {
    const seconds = findRoot((time) => temperatureAt(time, course) - target, 0, warmUp);
    return { kind: 'reached', seconds };
  }
  const step = { start: afterWarmUp, surroundings: plateau, timeConstant: balance.timeConstant };
  const rest = lumpedTime(step, target);
  if (rest.kind === 'reached') return { kind: 'reached', seconds: warmUp + rest.seconds };
  return { kind: 'unreachable' };
}
