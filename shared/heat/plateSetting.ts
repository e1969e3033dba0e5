import { requireNumber } from '../errors/requireNumber.ts';
import { requireGreater } from '../errors/requireOrder.ts';
import { type HeatRemedy, heatRemedies } from './heatRemedies.ts';
import { type MoldOnPlate, moldBalance, moldPlateau } from './moldOnPlate.ts';

export interface PlateWanted {
  readonly mold: MoldOnPlate;
  /** The mold top must settle here [°C], above the room */
  readonly target: number;
  /** Plateau above the target, so that it is reached in time and not only in the end [K], >= 0 */
  readonly margin: number;
  /** Range of the plate's dial [°C], highest above lowest */
  readonly lowestSetting: number;
  readonly highestSetting: number;
}

export type PlateSetting =
  | { readonly kind: 'setting'; readonly setting: number; readonly plateau: number }
  | {
      readonly kind: 'unreachable';
      readonly because: 'setting above the range of the plate';
      readonly settingNeeded: number | undefined;
      readonly highestSetting: number;
      /** Where the mold settles at the highest setting [°C] */
      readonly plateau: number;
      readonly remedies: readonly HeatRemedy[];
    };

/**
 * Plate setting at which the mold top settles a margin above its target.
 *
 * T_plate = T + h_loss (1 + A_side / A) / h_c (T - T_room), T target plus margin; never below the dial's lowest setting.
 * A dial is off by 10 K and more: the mold top is read, not the dial.
 *
 * @returns setting and plateau [°C], or `unreachable` with what would help
 * @throws InputError on a figure out of range, a target not above the room, or a range upside down
 * @source INCROPERA, section 5.1, with two surroundings
 */
export function plateSetting(wanted: PlateWanted): PlateSetting {
  const { target, margin, lowestSetting, highestSetting } = wanted;
  const balance = moldBalance(wanted.mold);
  requireNumber(target, 'target temperature', { unit: 'degC' });
  requireNumber(margin, 'margin', { unit: 'differenceC', atLeast: 0 });
  requireNumber(lowestSetting, 'lowest setting', { unit: 'degC' });
  requireNumber(highestSetting, 'highest setting', { unit: 'degC' });
  const room = { field: 'room temperature', value: balance.roomTemperature };
  requireGreater({ field: 'target temperature', value: target }, room, 'degC');
  const lowest = { field: 'lowest setting', value: lowestSetting };
  requireGreater({ field: 'highest setting', value: highestSetting }, lowest, 'degC');

  const plateau = target + margin;
  const remedies = heatRemedies(balance, plateau, highestSetting);
  const higher = remedies.find((remedy) => remedy.kind === 'higher setting');
  if (higher && higher.setting <= highestSetting) {
    const setting = Math.max(higher.setting, lowestSetting);
    return { kind: 'setting', setting, plateau: moldPlateau(balance, setting) };
  }
  return {
    kind: 'unreachable',
    because: 'setting above the range of the plate',
    settingNeeded: higher?.setting,
    highestSetting,
    plateau: moldPlateau(balance, highestSetting),
    remedies,
  };
}
