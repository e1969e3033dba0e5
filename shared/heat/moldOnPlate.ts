import { requireNumber } from '../errors/requireNumber.ts';
import { DEFAULTS } from '../material/defaults.ts';

/** A metal block standing on a hot or cold plate, in a room. Everything below the room has a documented default. */
export interface MoldOnPlate {
  /** Footprint [m], > 0 */
  readonly length: number;
  readonly width: number;
  /** Of the block, stacked halves together [m], > 0 */
  readonly height: number;
  readonly roomTemperature: number;
  /** Plate to block [W/(m2 K)], >= 0; 0 on an insulating board */
  readonly contactConductance?: number;
  /** Top and sides to the room, convection and radiation together [W/(m2 K)], > 0; a lid lowers it */
  readonly lossCoefficient?: number;
  /** Of the metal [kg/m3], > 0 */
  readonly density?: number;
  /** Of the metal [J/(kg K)], > 0 */
  readonly specificHeat?: number;
}

/** What a block exchanges per m2 of its footprint. */
export interface MoldBalance {
  /** From the plate [W/(m2 K)] */
  readonly gain: number;
  /** To the room through top and sides [W/(m2 K)] */
  readonly loss: number;
  /** Exposed surface over footprint: 1 + A_side / A */
  readonly exposure: number;
  readonly roomTemperature: number;
  /** rho cp H / (gain + loss) [s] */
  readonly timeConstant: number;
}

/**
 * Heat balance of a block on a plate, the block at one temperature throughout (Biot about 0.02).
 *
 * tau = rho cp H / (h_c + h_loss (1 + A_side / A)). The cavities are left out: they take under a tenth of the metal.
 *
 * @throws InputError on a figure out of range
 * @source INCROPERA, section 5.1, with two surroundings
 */
export function moldBalance(mold: MoldOnPlate): MoldBalance {
  const {
    contactConductance: gain = DEFAULTS.contactConductanceGriddle.value,
    lossCoefficient = DEFAULTS.moldLossBare.value,
    roomTemperature,
    density = DEFAULTS.aluminumDensity.value,
    specificHeat = DEFAULTS.aluminumSpecificHeat.value,
  } = mold;
  requireNumber(mold.length, 'block length', { unit: 'm', greaterThan: 0 });
  requireNumber(mold.width, 'block width', { unit: 'm', greaterThan: 0 });
  requireNumber(mold.height, 'block height', { unit: 'm', greaterThan: 0 });
  requireNumber(gain, 'contact conductance', { unit: 'WPerM2K', atLeast: 0 });
  requireNumber(lossCoefficient, 'mold heat loss', { unit: 'WPerM2K', greaterThan: 0 });
  requireNumber(roomTemperature, 'room temperature', { unit: 'degC' });
  requireNumber(density, 'metal density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(specificHeat, 'metal specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  const exposure = 1 + (2 * mold.height * (mold.length + mold.width)) / (mold.length * mold.width);
  const loss = lossCoefficient * exposure;
  const timeConstant = (density * specificHeat * mold.height) / (gain + loss);
  return { gain, loss, exposure, roomTemperature, timeConstant };
}

/**
 * Where the block settles on a plate: the mean of plate and room, weighted by their conductances.
 * @param plateTemperature - of the plate's surface [°C]
 * @returns [°C]
 * @throws InputError when the plate temperature is not a number
 */
export function moldPlateau(balance: MoldBalance, plateTemperature: number): number {
  requireNumber(plateTemperature, 'plate temperature', { unit: 'degC' });
  const { gain, loss, roomTemperature } = balance;
  return (gain * plateTemperature + loss * roomTemperature) / (gain + loss);
}
