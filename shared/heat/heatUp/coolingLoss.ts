import { requireNumber } from '../../errors/requireNumber.ts';
import { type BlockInRoom, blockInRoom, blockLoss } from './blockInRoom.ts';
import { timeBetween } from './timeBetween.ts';

/**
 * The one loss coefficient with which a block off its plate takes as long from one temperature to another as with its own
 * loss, which wanes as it cools. For `coolToDemold`, whose closed form wants a constant.
 *
 * h = C ln[(T0 - T_room) / (T - T_room)] / (t A); a kelvin above the room's where nothing is to be cooled.
 *
 * @param from - of the block as it leaves the plate [°C]
 * @param to - [°C]
 * @returns over top and sides [W/(m2 K)]
 * @throws InputError on a figure out of range
 * @source INCROPERA, sections 5.3 and 9.6
 */
export function coolingLoss(
  block: BlockInRoom,
  { from, to }: { readonly from: number; readonly to: number },
): number {
  requireNumber(from, 'mold temperature', { unit: 'degC' });
  requireNumber(to, 'end temperature', { unit: 'degC' });
  const { network, room, capacity } = blockInRoom(block);
  const { temperature: end } = room;
  const area = network.parts.reduce(
    (sum, { faces }) => faces.reduce((all, { area }) => all + area, sum),
    0,
  );
  if (to >= from || to <= end) return blockLoss(network, end + 1, room) / area;
  const rate = (top: number) => -blockLoss(network, top, room) / capacity;
  const seconds = timeBetween(rate, { from, to, end });
  return (capacity * Math.log((from - end) / (to - end))) / (seconds * area);
}
