import type { Shop } from '../../book/settings/settings.ts';
import { plateRun } from '../../heat/heatUp/plateRun.ts';
import { plateUnder } from '../../heat/heatUp/steadyPlate.ts';
import { MEASURES, type UnitSystem } from '../../units/measures.ts';
import { fromEngine, toEngine } from '../../units/toEngine.ts';
import { rounded } from '../../words/quantityText.ts';
import type { MoldFacts } from '../facts/findMold.ts';
import type { PlateFacts } from '../facts/findPlate.ts';
import { topTargetOf } from './plateHeat.ts';
import { type PlateSet, plateSetup, withoutLid } from './plateSetup.ts';

/**
 * The setting is chosen so that the mold top would settle this far above its target [K]. At the target itself the last
 * degree takes for ever; 10 K above, the target is reached after about 2.2 time constants. A choice, not a fact.
 */
const PLATEAU_MARGIN = 10;

/** A closed mold has no cooler surface: its plastic ends at the mold's own heat, which must stay below firm. [K] */
const LEAST_MARGIN = 2;

/** Steps of a dial that can be set by eye, 5 degrees of either scale. */
const DIAL_STEP = 5;

/**
 * Dial setting at which the mold top, its lid off as in pouring, settles a margin above its target; in a two-piece mold half
 * way to the firm temperature, if that is less.
 *
 * Rounded up to a step of the dial and kept within its range, which may leave it short. The watts are not asked.
 *
 * @returns [degC]
 */
export function plateSettingFor(
  mold: MoldFacts,
  plate: PlateFacts,
  shop: Shop,
  set: Omit<PlateSet, 'setting'>,
): number {
  const needed = dialStep(settingNeeded(mold, plate, shop, set), shop.units);
  const lowest = plate.lowestSetting ?? shop.roomTemperature;
  return Math.min(Math.max(needed, lowest), plate.highestSetting);
}

function settingNeeded(
  facts: MoldFacts,
  plate: PlateFacts,
  shop: Shop,
  set: Omit<PlateSet, 'setting'>,
): number {
  const setup = plateSetup(facts, plate, shop, { ...set, setting: plate.highestSetting });
  const { molds, room } = plateRun(setup);
  const wanted = topTargetOf(shop) + marginOf(facts, shop);
  const surfaces = molds.map((mold) => plateUnder(withoutLid(mold, plate), wanted, room).plate);
  return Math.max(...surfaces) - set.figures.dialOffset;
}

function marginOf({ kind }: MoldFacts, shop: Shop): number {
  if (kind === 'open') return PLATEAU_MARGIN;
  const half = (shop.firmTemperature - topTargetOf(shop)) / 2;
  return Math.min(PLATEAU_MARGIN, Math.max(LEAST_MARGIN, half));
}

function dialStep(setting: number, system: UnitSystem): number {
  const unit = MEASURES.temperature[system];
  return toEngine(rounded(fromEngine(setting, unit), DIAL_STEP, 'up'), unit);
}
