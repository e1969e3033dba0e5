import type { Shop } from '../../book/settings/settings.ts';
import { boilingPoint } from '../../heat/boilingPoint.ts';
import { plateRun } from '../../heat/heatUp/plateRun.ts';
import { steadyPlate } from '../../heat/heatUp/steadyPlate.ts';
import { countText, quantityText, temperatureText } from '../../words/quantityText.ts';
import type { MoldFacts } from '../facts/findMold.ts';
import type { PlateFacts } from '../facts/findPlate.ts';
import { topTargetOf } from './plateHeat.ts';
import { plateRemedies } from './plateRemedies.ts';
import { type PlateSet, plateSetup, plateSize } from './plateSetup.ts';

/** Why the mold top never reads its target, and what would help; the figures of a plan that has no answer. */
export function unreachableTarget(
  mold: MoldFacts,
  plate: PlateFacts,
  shop: Shop,
  set: PlateSet,
): string {
  const run = plateRun(plateSetup(mold, plate, shop, set));
  const settled = steadyPlate(run.plate, run.molds, run.room);
  const target = temperatureText(topTargetOf(shop), shop.units, 'up');
  const boiling = temperatureText(boilingPoint(shop.elevation), shop.units);
  const short = `the ${target} that it must read (water boils at ${boiling} here)`;
  const top = temperatureText(settled.tops[0] ?? shop.roomTemperature, shop.units, 'down');
  const setting = temperatureText(set.setting, shop.units);
  const remedies = plateRemedies(mold, plate, shop, set);
  if ((settled.tops[0] ?? 0) > topTargetOf(shop))
    return `set to ${setting}, ${plate.name} needs more than half a day for ${short}: ${remedies}`;
  if (settled.duty === 1) {
    const watts = quantityText(plateSize(plate).watts, 'power', shop.units, 0);
    const molds = countText(set.count, 'mold');
    const stalls = temperatureText(settled.plate, shop.units, 'down');
    return `set to ${setting}, ${plate.name} stalls at ${stalls}, since its ${watts} carry ${molds} no further, and the mold top settles at ${top}, short of ${short}: ${remedies}`;
  }
  if (plate.highestSetting + set.figures.dialOffset <= topTargetOf(shop))
    return `at its highest setting, ${setting}, ${plate.name} is not as hot as the ${target} that the mold top must read (water boils at ${boiling} here): ${remedies}`;
  return `at the highest setting of ${plate.name}, ${setting}, the mold top settles at ${top}, short of ${short}: ${remedies}`;
}
