import type { Shop } from '../book/settings.ts';
import { InputError } from '../errors/InputError.ts';
import { coolToDemold } from '../heat/coolToDemold.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { closedThickness, effectiveThickness } from './effectiveThickness.ts';
import type { OrderFacts } from './findOrder.ts';
import { moldLoss } from './planPlate.ts';

/**
 * Time off the plate, on an insulating board in still air, until pieces may come out [s]. The mold starts at its plateau, the
 * hottest it can be; the casting at its last pour.
 * @param moldStart - [degC]
 * @throws InputError when the room is not below the demold temperature
 */
export function planCoolDown(facts: OrderFacts, shop: Shop, moldStart: number): number {
  const { mold, pattern } = facts;
  const section = { profile: mold.profile, width: mold.cavityWidth, depth: mold.cavityDepth };
  const last = pattern.layers[pattern.layers.length - 1];
  const poured = (last?.pourTemperature ?? shop.pourTemperature) - DEFAULTS.pourLoss.value;
  const cooling = coolToDemold({
    mold: {
      length: mold.blockLength,
      width: mold.blockWidth,
      height: mold.blockHeight,
      contactConductance: 0,
      lossCoefficient: moldLoss(mold),
      roomTemperature: shop.roomTemperature,
    },
    moldStart,
    castingStart: Math.max(poured, moldStart),
    castingDepth:
      mold.kind === 'two-piece' ? closedThickness(section) : effectiveThickness(section, 1),
    demoldTemperature: shop.demoldTemperature,
  });
  if (cooling.kind === 'reached') return cooling.seconds;
  throw new InputError({
    field: 'demold temperature',
    rule: { kind: 'greater than', limit: shop.roomTemperature, what: 'room temperature' },
    value: shop.demoldTemperature,
    unit: 'degC',
  });
}
