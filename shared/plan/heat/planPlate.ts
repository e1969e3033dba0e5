import type { Shop } from '../../book/settings/settings.ts';
import { boilingPoint } from '../../heat/boilingPoint.ts';
import type { MoldFacts } from '../facts/findMold.ts';
import type { PlateFacts } from '../facts/findPlate.ts';
import type { PlatePlan } from '../planTypes.ts';
import { type HeatFigures, usualFigures } from './heatFigures.ts';
import { type PlateHeat, plateHeat, topTargetOf } from './plateHeat.ts';
import { plateSettingFor } from './plateSettingFor.ts';
import { unreachableTarget } from './unreachableTarget.ts';

/** What the plate does to the mold, before clock times. */
export type PlateOutcome = Pick<PlateHeat, 'climb' | 'samples' | 'energy'> & {
  readonly setting: number;
  /** What the mold top can be counted on to read at the first pour [degC] */
  readonly top: number;
} & (
    | Omit<PlatePlan, 'onAt' | 'readyAt' | 'readyWait'>
    | { readonly kind: 'unreachable'; readonly because: string }
  );

/**
 * Dial setting, plateau, heat-up and climb of molds on their plate, by the accurate path.
 * @param count - copies of the mold on the plate in one round
 */
export function planPlate(
  mold: MoldFacts,
  plate: PlateFacts,
  shop: Shop,
  count: number,
  figures: HeatFigures = usualFigures(plate, shop),
): PlateOutcome {
  const set = { count, figures };
  const setting = plateSettingFor(mold, plate, shop, set);
  const heat = plateHeat(mold, plate, shop, { ...set, setting, effort: 'exact' });
  const { plateau, heatUp, lidOff, energy, climb, samples } = heat;
  if (heatUp === undefined) {
    const because = unreachableTarget(mold, plate, shop, { ...set, setting });
    return { kind: 'unreachable', because, setting, top: plateau, climb, samples };
  }
  const target = topTargetOf(shop);
  return {
    kind: 'reachable',
    plate: plate.name,
    setting,
    topTarget: target,
    boilingPoint: boilingPoint(shop.elevation),
    plateau,
    ...(lidOff === undefined ? {} : { lidOff }),
    heatUp,
    top: target,
    ...(energy === undefined ? {} : { energy }),
    climb,
    samples,
  };
}
