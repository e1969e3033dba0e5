import type { Shop } from '../../book/settings/settings.ts';
import { plateRun } from '../../heat/heatUp/plateRun.ts';
import { steadyPlate } from '../../heat/heatUp/steadyPlate.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { countText, quantityText, rounded, temperatureText } from '../../words/quantityText.ts';
import type { MoldFacts } from '../facts/findMold.ts';
import type { PlateFacts } from '../facts/findPlate.ts';
import { plateHeat } from './plateHeat.ts';
import { plateSettingFor } from './plateSettingFor.ts';
import { type PlateSet, plateSetup } from './plateSetup.ts';

type Change = Omit<PlateSet, 'setting'> & { readonly plate: PlateFacts };

const LID = 'lay a lid over the mold';
const FLATTER = 'flatten its contact with the plate';
/** A remedy that takes longer is none [s]. */
const LONGEST_HEAT_UP = 7200;
/** Hottest setting of plates that a shop can buy without looking far [degC]; from memory. */
const HOTTEST = 300;
/** Watts are named in steps [W], with a fifth to spare for the heat-up. */
const WATT_STEP = 100;
const SPARE = 1.25;
/** Never the limit [W]. */
const PLENTY = 1e9;

/** Changes that alone would bring the mold top to its target within two hours, each tried out, as an instruction. */
export function plateRemedies(
  mold: MoldFacts,
  plate: PlateFacts,
  shop: Shop,
  { count, figures }: PlateSet,
): string {
  const works = (change: Change) => isHotInTime(mold, shop, change);
  const given: Change = { plate, count, figures };
  const lid = { ...given, plate: { ...plate, lid: 'lid' } as const };
  const contactConductance = Math.max(flattest(plate), figures.contactConductance);
  const flat = { ...figures, contactConductance };
  const remedies: string[] = [];
  if (works(lid)) remedies.push(LID);
  if (works({ ...given, figures: flat })) remedies.push(FLATTER);
  if (remedies.length === 0 && works({ ...lid, figures: flat }))
    remedies.push(plate.lid === 'lid' ? FLATTER : `${LID} and ${FLATTER}`);
  const fewer = mostThat(count, (one) => works({ ...given, count: one }));
  if (fewer > 0) remedies.push(`heat ${countText(fewer, 'mold')} at a time`);
  const hotter = hotterPlate(mold, shop, given);
  if (works(hotter)) remedies.push(plateWords(hotter.plate, plate, shop));
  if (remedies.length === 0)
    return 'no lid, flatter contact or hotter plate alone is enough, so use a smaller mold';
  const [last, ...others] = remedies.reverse();
  return others.length === 0 ? `${last}` : `${others.reverse().join(', ')}, or ${last}`;
}

function isHotInTime(mold: MoldFacts, shop: Shop, { plate, ...set }: Change): boolean {
  const setting = plateSettingFor(mold, plate, shop, set);
  const { heatUp } = plateHeat(mold, plate, shop, { ...set, setting, effort: 'quick' });
  return heatUp !== undefined && heatUp <= LONGEST_HEAT_UP;
}

/** Best contact of the plate's kind [W/(m2 K)]. */
function flattest({ kind }: PlateFacts): number {
  return kind === 'thin griddle'
    ? DEFAULTS.contactConductanceGriddle.high
    : DEFAULTS.contactConductanceThickPlate.high;
}

/** Most molds below a count that still work, by halving: fewer never get less hot. */
function mostThat(count: number, works: (count: number) => boolean): number {
  let [most, tooMany] = [0, count];
  while (tooMany - most > 1) {
    const middle = (most + tooMany) >> 1;
    if (works(middle)) most = middle;
    else tooMany = middle;
  }
  return most;
}

/** The same plate with the dial, and where that is not enough the watts, that the molds want. */
function hotterPlate(mold: MoldFacts, shop: Shop, { plate, ...set }: Change): Change {
  const open = { ...plate, highestSetting: Math.max(plate.highestSetting, HOTTEST) };
  const setting = plateSettingFor(mold, open, shop, set);
  const hot = { ...plate, highestSetting: Math.max(plate.highestSetting, setting) };
  const steady = (one: PlateFacts) => {
    const {
      plate: heated,
      molds,
      room,
    } = plateRun(plateSetup(mold, one, shop, { ...set, setting }));
    return steadyPlate(heated, molds, room);
  };
  if (steady(hot).duty < 1) return { ...set, plate: hot };
  const needed = steady({ ...hot, watts: PLENTY }).duty * PLENTY;
  return { ...set, plate: { ...hot, watts: rounded(needed * SPARE, WATT_STEP, 'up') } };
}

function plateWords(hotter: PlateFacts, plate: PlateFacts, shop: Shop): string {
  const { highestSetting: setting, watts } = hotter;
  const set = `can be set to ${temperatureText(setting, shop.units)}`;
  const strong = `${quantityText(watts ?? 0, 'power', shop.units, 0)} or more`;
  if (watts === plate.watts) return `use a plate that ${set}`;
  return setting === plate.highestSetting
    ? `use a plate of ${strong}`
    : `use a plate of ${strong} that ${set}`;
}
