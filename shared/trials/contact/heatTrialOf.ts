import type { Shop } from '../../book/settings/settings.ts';
import type { HeatTrial } from '../../heat/fit/heatTrial.ts';
import type { PlateFacts } from '../../plan/facts/findPlate.ts';
import { usualFigures } from '../../plan/heat/heatFigures.ts';
import { type MoldBlock, plateSetup } from '../../plan/heat/plateSetup.ts';
import type { Heating } from './gatherHeat.ts';

/**
 * A heating as the fit takes it: set up as the plan sets up the same plate, mold, room and lid. What earlier trials put
 * into Plates is left out, so that the same readings always give the same figure.
 */
export function heatTrialOf(
  heating: Heating,
  block: MoldBlock,
  plate: PlateFacts,
  shop: Shop,
): HeatTrial {
  const unfitted: PlateFacts = { ...plate, contactConductance: undefined, lid: heating.lid };
  const room: Shop = { ...shop, roomTemperature: heating.roomTemperature };
  const figures = { ...usualFigures(unfitted, room), lossShare: 1 };
  const set = { setting: heating.setting, count: heating.moldsOnPlate, figures };
  const setup = plateSetup(block, unfitted, room, set);
  const [mold = { length: 0, width: 0, height: 0 }] = setup.molds;
  const isHot = heating.start === 'hot' && setup.plate.kind === 'heated';
  return {
    plate: isHot ? { ...setup.plate, startTemperature: setup.plate.setting } : setup.plate,
    mold,
    roomTemperature: setup.roomTemperature,
    ...(setup.pressure === undefined ? {} : { pressure: setup.pressure }),
    readings: heating.readings.map(({ seconds, top }) => ({ seconds, top })),
  };
}
