import { requireGreater } from '../../errors/requireGreater.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import { SEA_LEVEL_AIR } from './airFilm.ts';
import type { Room } from './faceCoefficient.ts';
import { type HeatingMold, type MoldNetwork, moldNetwork, partLoss } from './heatingMold.ts';
import { requirePlate } from './heatingPlate.ts';
import { plateUnder, steadyPlate } from './steadyPlate.ts';

/** A single block, without a joint, and the still room around it. */
export interface BlockInRoom {
  readonly mold: Omit<HeatingMold, 'jointConductance' | 'count'>;
  /** [°C], -20 to 60 */
  readonly roomTemperature: number;
}

/** The block as one body, checked. @throws InputError on a figure out of range */
export function blockInRoom({ mold, roomTemperature }: BlockInRoom) {
  const temperature = { unit: 'degC', atLeast: -20, atMost: 60 } as const;
  requireNumber(roomTemperature, 'room temperature', temperature);
  const room: Room = { temperature: roomTemperature, pressure: SEA_LEVEL_AIR };
  const network = moldNetwork(mold, room);
  const capacity = network.parts.reduce((sum, part) => sum + part.capacity, 0);
  return { network, room, capacity };
}

/** Heat that the block loses to the room [W]. */
export function blockLoss({ parts, lossShare }: MoldNetwork, top: number, room: Room): number {
  return parts.reduce((sum, part) => sum + partLoss(part, top, { room, lossShare }), 0);
}

/**
 * Where the top of a block settles on a plate held at a setting.
 * @returns [°C]
 * @throws InputError on a figure out of range, or a setting not above the room
 */
export function blockPlateau(block: BlockInRoom, setting: number): number {
  const { network, room } = blockInRoom(block);
  const plate = { kind: 'held', setting } as const;
  requirePlate(plate, room);
  return steadyPlate(plate, [network], room).tops[0] ?? setting;
}

/**
 * Plate setting at which the top of a block settles a margin above its target: T + loss(T) / (h_c A).
 * @param target - above the room [°C]
 * @param margin - [K], >= 0
 * @returns [°C]
 * @throws InputError on a figure out of range
 */
export function blockSetting(block: BlockInRoom, target: number, margin = 0): number {
  const { network, room } = blockInRoom(block);
  const cold = { field: 'room temperature', value: room.temperature };
  requireNumber(target, 'target temperature', { unit: 'degC' });
  requireNumber(margin, 'margin', { unit: 'differenceC', atLeast: 0 });
  requireGreater({ field: 'target temperature', value: target }, cold, 'degC');
  return plateUnder(network, target + margin, room).plate;
}
