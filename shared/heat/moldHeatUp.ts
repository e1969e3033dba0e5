import { requireNumber } from '../errors/requireNumber.ts';
import { requireGreater } from '../errors/requireOrder.ts';
import { findRoot } from './findRoot.ts';
import { type HeatRemedy, heatRemedies } from './heatRemedies.ts';
import { lumpedTemperature, lumpedTime } from './lumpedTime.ts';
import { type MoldBalance, type MoldOnPlate, moldBalance, moldPlateau } from './moldOnPlate.ts';

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
    | {
        readonly kind: 'unreachable';
        readonly because: 'plateau below target';
        readonly remedies: readonly HeatRemedy[];
      };
}

/**
 * How a mold heats up on a plate: plateau, time constant, and the time until its top reads a target.
 *
 * t = tau ln[(T_inf - T0) / (T_inf - T)]; during a plate warm-up T = T_ramp(t) - r tau + (T0 - T_ramp(0) + r tau) e^(-t/tau).
 * One loss coefficient stands for all temperatures. Against `heatUpCourse`, whose loss varies with temperature, minutes are
 * within 12 % while the target is at most 80 % of the rise to the plateau and within 17 % at 90 %; nearer to the plateau the
 * figure is no use. The contact conductance decides nearly everything.
 *
 * @param target - mold top [°C]
 * @returns plateau [°C], time constant [s], and seconds from switch-on or `unreachable` with what would help
 * @throws InputError on a figure out of range, or a plate not hotter than the room
 * @source INCROPERA, section 5.1, with two surroundings
 */
export function moldHeatUp(heatUp: HeatUp, target: number): HeatUpResult {
  const course = prepare(heatUp);
  requireNumber(target, 'target temperature', { unit: 'degC' });
  const { balance, plateau } = course;
  return { plateau, timeConstant: balance.timeConstant, time: timeTo(target, course) };
}

/**
 * Temperature of the mold top some time after the plate was switched on.
 * @param seconds - since switch-on [s], >= 0
 * @returns [°C]
 * @throws InputError as `moldHeatUp`
 */
export function moldTemperature(heatUp: HeatUp, seconds: number): number {
  const course = prepare(heatUp);
  requireNumber(seconds, 'time', { unit: 's', atLeast: 0 });
  return temperatureAt(seconds, course);
}

interface Course {
  readonly balance: MoldBalance;
  readonly plateau: number;
  readonly start: number;
  readonly warmUp: number;
  readonly setting: number;
}

function prepare({ mold, plateSetting, startTemperature, plateWarmUp = 0 }: HeatUp): Course {
  const balance = moldBalance(mold);
  const start = startTemperature ?? balance.roomTemperature;
  requireNumber(plateSetting, 'plate setting', { unit: 'degC' });
  requireNumber(start, 'mold start temperature', { unit: 'degC' });
  requireNumber(plateWarmUp, 'plate warm-up', { unit: 's', atLeast: 0 });
  requireGreater(
    { field: 'plate setting', value: plateSetting },
    { field: 'room temperature', value: balance.roomTemperature },
    'degC',
  );
  const plateau = moldPlateau(balance, plateSetting);
  return { balance, plateau, start, warmUp: plateWarmUp, setting: plateSetting };
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
  const { balance, plateau, start, warmUp, setting } = course;
  if (start >= target) return { kind: 'reached', seconds: 0 };
  const afterWarmUp = temperatureAt(warmUp, course);
  if (afterWarmUp >= target) {
    const seconds = findRoot((time) => temperatureAt(time, course) - target, 0, warmUp);
    return { kind: 'reached', seconds };
  }
  const step = { start: afterWarmUp, surroundings: plateau, timeConstant: balance.timeConstant };
  const rest = lumpedTime(step, target);
  if (rest.kind === 'reached') return { kind: 'reached', seconds: warmUp + rest.seconds };
  const remedies = heatRemedies(balance, target, setting);
  return { kind: 'unreachable', because: 'plateau below target', remedies };
}
