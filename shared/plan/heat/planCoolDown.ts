import type { Shop } from '../../book/settings/settings.ts';
import { InputError } from '../../errors/InputError.ts';
import { cavityShapeFactor } from '../../heat/cavityShapeFactor.ts';
import { coolToDemold } from '../../heat/coolToDemold.ts';
import { coolingLoss } from '../../heat/heatUp/coolingLoss.ts';
import { closedThickness, effectiveThickness } from '../facts/effectiveThickness.ts';
import type { MoldFacts } from '../facts/findMold.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import { openAspect } from '../facts/openAspect.ts';
import { usualFigures } from './heatFigures.ts';
import { finishOf } from './plateSetup.ts';

/**
 * Time off the plate, on an insulating board in still air, until pieces may come out [s]. The mold starts at its plateau, the
 * hottest it can be; the casting at its last pour. The mold's loss wanes as it cools: its mean over the fall counts.
 * @param moldStart - [degC]
 * @throws InputError when the room is not below the demold temperature
 */
export function planCoolDown(facts: OrderFacts, shop: Shop, moldStart: number): number {
  const { mold, pattern } = facts;
  const { lossShare, pourLoss } = usualFigures(facts.plate, shop);
  const last = pattern.layers[pattern.layers.length - 1];
  const poured = (last?.pourTemperature ?? shop.pourTemperature) - pourLoss;
  const { roomTemperature } = shop;
  const block = {
    length: mold.blockLength,
    width: mold.blockWidth,
    height: mold.blockHeight,
  };
  const bare = { ...block, finish: finishOf(mold), lossShare };
  const fall = { from: moldStart, to: shop.demoldTemperature };
  const cooling = coolToDemold({
    mold: {
      ...block,
      contactConductance: 0,
      lossCoefficient: coolingLoss({ mold: bare, roomTemperature }, fall),
      roomTemperature,
    },
    moldStart,
    castingStart: Math.max(poured, moldStart),
    ...castingIn(mold),
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

/** The whole cavity, as the layer models take it: volume over wetted metal, and the shape. */
function castingIn({ kind, profile, cavityWidth: width, cavityDepth: depth }: MoldFacts) {
  const section = { profile, width, depth };
  const closed = kind === 'two-piece';
  return {
    castingDepth: closed ? closedThickness(section) : effectiveThickness(section, 1),
    shapeFactor: cavityShapeFactor(profile, closed ? depth / width : openAspect(section, 1)),
  };
}
