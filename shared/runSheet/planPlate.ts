import type { Shop } from '../book/settings.ts';
import { boilingPoint } from '../heat/boilingPoint.ts';
import { moldHeatUp } from '../heat/moldHeatUp.ts';
import type { MoldOnPlate } from '../heat/moldOnPlate.ts';
import { plateSetting } from '../heat/plateSetting.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { fromEngine, toEngine } from '../units/convert.ts';
import { MEASURES, type UnitSystem } from '../units/measures.ts';
import type { MoldFacts } from './findMold.ts';
import type { PlateFacts } from './findPlate.ts';
import type { PlatePlan } from './plan.ts';
import { rounded, sayTemperature } from './say.ts';

/**
 * The setting is chosen so that the mold top would settle this far above its target [K]. At the target itself the last
 * degree takes for ever; 10 K above, the target is reached after about 2.2 time constants. A choice, not a fact.
 */
const PLATEAU_MARGIN = 10;

/** Steps of a dial that can be set by eye, 5 degrees of either scale. */
const DIAL_STEP = 5;

/** What the plate does to the mold, before clock times. */
export type PlateOutcome =
  | (Omit<PlatePlan, 'onAt' | 'readyAt' | 'readyWait'> & { readonly top: number })
  | { readonly kind: 'unreachable'; readonly because: string; readonly top: number };

/** A mold on its plate with the shop's room, the plate's fitted conductance or the default of its kind, and the finish's heat loss. */
function moldOnPlate(mold: MoldFacts, plate: PlateFacts, shop: Shop): MoldOnPlate {
  const usual =
    plate.kind === 'thin griddle'
      ? DEFAULTS.contactConductanceGriddle
      : DEFAULTS.contactConductanceThickPlate;
  return {
    length: mold.blockLength,
    width: mold.blockWidth,
    height: mold.blockHeight,
    contactConductance: plate.contactConductance ?? usual.value,
    lossCoefficient: moldLoss(mold),
    roomTemperature: shop.roomTemperature,
  };
}

/** Heat loss of the mold's outside by its finish [W/(m2 K)]. */
export function moldLoss(mold: MoldFacts): number {
  return (mold.finish === 'anodized' ? DEFAULTS.moldLossAnodized : DEFAULTS.moldLossBare).value;
}

/**
 * Dial setting, plateau and heat-up time of a mold on its plate; `top` is what the mold top can be counted on to read at the first pour.
 * The setting is rounded up to a step of the dial and kept within its range.
 */
export function planPlate(mold: MoldFacts, plate: PlateFacts, shop: Shop): PlateOutcome {
  const block = moldOnPlate(mold, plate, shop);
  const boiling = boilingPoint(shop.elevation);
  const target = boiling + shop.topTarget;
  if (plate.highestSetting <= target) return tooCool(plate, shop, target, shop.roomTemperature);
  const wanted = plateSetting({
    mold: block,
    target,
    margin: PLATEAU_MARGIN,
    lowestSetting: shop.roomTemperature,
    highestSetting: plate.highestSetting,
  });
  const least = Math.max(
    wanted.kind === 'setting' ? wanted.setting : plate.highestSetting,
    plate.lowestSetting ?? shop.roomTemperature,
  );
  const setting = Math.min(dialStep(least, shop.units), plate.highestSetting);
  const { plateau, time } = moldHeatUp(
    { mold: block, plateSetting: setting, plateWarmUp: plate.warmUp },
    target,
  );
  if (time.kind === 'unreachable') return tooCool(plate, shop, target, plateau);
  return {
    kind: 'reachable',
    plate: plate.name,
    setting,
    topTarget: target,
    boilingPoint: boiling,
    plateau,
    heatUp: time.seconds,
    top: target,
  };
}

function dialStep(setting: number, system: UnitSystem): number {
  const unit = MEASURES.temperature[system];
  return toEngine(rounded(fromEngine(setting, unit), DIAL_STEP, 'up'), unit);
}

function tooCool(plate: PlateFacts, shop: Shop, target: number, top: number): PlateOutcome {
  const highest = sayTemperature(plate.highestSetting, shop.units);
  const reached = sayTemperature(top, shop.units, 'down');
  const wanted = sayTemperature(target, shop.units, 'up');
  const why =
    plate.highestSetting <= target
      ? `the highest setting of ${plate.name}, ${highest}, is below the ${wanted} that the mold top must read: use a hotter plate`
      : `at the highest setting of ${plate.name}, ${highest}, the mold top settles at ${reached}, short of ${wanted}: lay a lid over the mold, flatten its contact with the plate, or use a hotter plate`;
  return { kind: 'unreachable', because: why, top };
}
