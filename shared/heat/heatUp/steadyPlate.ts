import { findRoot } from '../findRoot.ts';
import type { Room } from './faceCoefficient.ts';
import { type MoldNetwork, partLoss } from './heatingMold.ts';
import type { HeatingPlate } from './heatingPlate.ts';

export interface SteadyPlate {
  /** Where plate and mold tops settle, for a plate in the middle of its dead band [°C]; a lopsided duty moves the mean inside the band */
  readonly plate: number;
  readonly tops: readonly number[];
  /** Share of the time that the heater is on; 0 for a plate held without counting power */
  readonly duty: number;
  /** What the heater feeds on average; of a held plate what flows into the molds alone [W] */
  readonly power: number;
}

/**
 * Where everything settles: gains and losses in balance; below the setting when the watts do not carry it.
 * @source INCROPERA, section 3.1.2, series of resistances
 */
export function steadyPlate(
  plate: HeatingPlate,
  molds: readonly MoldNetwork[],
  room: Room,
): SteadyPlate {
  const topsAt = (at: number) => molds.map((mold) => steadyTop(mold, at, room));
  const lossConductance = plate.kind === 'held' ? 0 : plate.lossConductance;
  const powerAt = (at: number) => {
    const own = lossConductance * (at - room.temperature);
    return molds.reduce((sum, mold) => {
      const { flow } = plateUnder(mold, steadyTop(mold, at, room), room);
      return sum + mold.count * flow;
    }, own);
  };
  const needed = powerAt(plate.setting);
  const settled = { plate: plate.setting, tops: topsAt(plate.setting), power: needed };
  if (plate.kind === 'held') return { ...settled, duty: 0 };
  if (needed <= plate.watts) return { ...settled, duty: needed / plate.watts };
  const short = findRoot((at) => powerAt(at) - plate.watts, room.temperature, plate.setting);
  return { plate: short, tops: topsAt(short), duty: 1, power: plate.watts };
}

function steadyTop(mold: MoldNetwork, plate: number, room: Room): number {
  const excess = (top: number) => plateUnder(mold, top, room).plate - plate;
  return findRoot(excess, room.temperature, plate);
}

/**
 * What holds a mold's top at a temperature, summed from the top downward.
 * @param top - [°C]
 * @returns temperature of the plate's surface [°C], and heat flow into one mold [W]
 */
export function plateUnder(mold: MoldNetwork, top: number, room: Room) {
  const { lossShare, parts, joint, contact } = mold;
  let temperature = top;
  let flow = 0;
  for (const [index, part] of [...parts].reverse().entries()) {
    if (index > 0) temperature += flow / joint;
    flow += partLoss(part, temperature, { room, lossShare });
  }
  return { plate: temperature + flow / contact, flow };
}
