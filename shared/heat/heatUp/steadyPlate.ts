import { findRoot } from '../findRoot.ts';
import type { Room } from './faceLoss.ts';
import { type MoldNetwork, partLoss } from './heatingMold.ts';
import type { HeatingPlate } from './heatingPlate.ts';

export interface SteadyPlate {
  /** Where plate and mold tops settle, for a plate in the middle of its dead band [°C]; a lopsided duty moves the mean inside the band */
  readonly plate: number;
  readonly tops: readonly number[];
  /** Share of the time that the heater is on; 0 for a plate held without counting power */
  readonly duty: number;
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
  if (plate.kind === 'held') return { plate: plate.setting, tops: topsAt(plate.setting), duty: 0 };
  const powerAt = (at: number) => {
    const own = plate.lossConductance * (at - room.temperature);
    return molds.reduce((sum, mold) => {
      const { flow } = plateUnder(mold, steadyTop(mold, at, room), room);
      return sum + mold.count * flow;
    }, own);
  };
  const needed = powerAt(plate.setting);
  if (needed <= plate.watts)
    return { plate: plate.setting, tops: topsAt(plate.setting), duty: needed / plate.watts };
  const short = findRoot((at) => powerAt(at) - plate.watts, room.temperature, plate.setting);
  return { plate: short, tops: topsAt(short), duty: 1 };
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
