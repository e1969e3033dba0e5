import { requireNumber } from '../../errors/requireNumber.ts';
import { type BlockInRoom, blockInRoom, blockLoss, blockPlateau } from './blockInRoom.ts';
import { integrateOde } from './integrateOde.ts';
import { timeBetween } from './timeBetween.ts';

/** A cold block on a plate held at its setting, or on one that climbs to it in a straight line whatever stands on it. */
export interface BlockOnPlate extends BlockInRoom {
  /** [°C], above the room */
  readonly plateSetting: number;
  /** From the room's temperature to the setting [s], >= 0; 0 for a warm plate */
  readonly plateWarmUp: number;
}

export type BlockTime =
  | { readonly kind: 'reached'; readonly seconds: number }
  /** Where the top settles instead [°C] */
  | { readonly kind: 'unreachable'; readonly plateau: number };

/**
 * Time until the top of a block reads a target, its loss varying with temperature: what `heatUpCourse` finds in steps, quick
 * enough for a column of thousands.
 *
 * t = integral of C dT / (h_c A (T_plate - T) - loss(T)); only a plate's warm-up is stepped. Within 0.1 % of `heatUpCourse`
 * up to 99.9 % of the rise.
 *
 * @param target - [°C]
 * @throws InputError on a figure out of range, or a setting not above the room
 * @source INCROPERA, section 5.3
 */
export function blockTime(block: BlockOnPlate, target: number): BlockTime {
  requireNumber(target, 'target temperature', { unit: 'degC' });
  requireNumber(block.plateWarmUp, 'plate warm-up', { unit: 's', atLeast: 0 });
  const { plateSetting, plateWarmUp } = block;
  const plateau = blockPlateau(block, plateSetting);
  const { network, room, capacity } = blockInRoom(block);
  if (network.start >= target) return { kind: 'reached', seconds: 0 };
  if (plateau <= target) return { kind: 'unreachable', plateau };
  const rate = (plate: number, top: number) =>
    (network.contact * (plate - top) - blockLoss(network, top, room)) / capacity;
  const warm = warmedUp();
  if (warm.top >= target) return { kind: 'reached', seconds: warm.seconds };
  const rest = timeBetween((top) => rate(plateSetting, top), {
    from: warm.top,
    to: target,
    end: plateau,
  });
  return { kind: 'reached', seconds: warm.seconds + rest };

  /** When the plate is warm, or the top at the target if that is sooner. */
  function warmedUp() {
    if (plateWarmUp === 0) return { seconds: 0, top: network.start };
    const climb = (plateSetting - room.temperature) / plateWarmUp;
    const points = integrateOde({
      rates: ([plate = 0, top = 0]) => [climb, rate(plate, top)],
      start: [room.temperature, network.start],
      from: 0,
      to: plateWarmUp,
      tolerance: 1e-3,
      longestStep: plateWarmUp,
      stopWhen: ([, top = 0]) => top - target,
    });
    const last = points[points.length - 1];
    return { seconds: last?.time ?? 0, top: last?.state[1] ?? network.start };
  }
}
