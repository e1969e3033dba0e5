import type { Shop } from '../../book/settings/settings.ts';
import { airPressure } from '../../heat/airPressure.ts';
import { faceCoefficient, type Room } from '../../heat/heatUp/faceCoefficient.ts';
import {
  type HeatingMold,
  LID_LOSS_SHARE,
  type MoldNetwork,
} from '../../heat/heatUp/heatingMold.ts';
import { type HeatingPlate, plateHeatCapacity } from '../../heat/heatUp/heatingPlate.ts';
import type { HeatUpSetup } from '../../heat/heatUp/plateRun.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { MoldFacts } from '../facts/findMold.ts';
import type { PlateFacts } from '../facts/findPlate.ts';
import type { HeatFigures } from './heatFigures.ts';

/** What heating a mold takes to know of it [m]. */
export type MoldBlock = Pick<MoldFacts, 'blockLength' | 'blockWidth' | 'blockHeight' | 'finish'>;

/** A plate with molds on it, as set. */
export interface PlateSet {
  /** Of the dial [degC] */
  readonly setting: number;
  /** Copies of the mold on the plate, a whole number >= 1 */
  readonly count: number;
  readonly figures: HeatFigures;
}

/** What the bare warm-up of a plate is timed to, fact 1's setting of 270 °F [degC]. */
const WARM_UP_TO = 132;
/** A plate seen to warm up has watts beyond what it loses: at most this share. */
const MOST_LOST = 0.9;
/** Bodies lighter than this against their contact [s] would cost short steps and gain the mold no more than seconds. */
const QUICKEST = 10;
/** What a plate's surface may be [degC]; one no hotter than the room heats nothing, which a hair above stands for. */
const HOTTEST = 400;
const HAIR = 0.1;

/** Molds on their plate in the shop's room, a lid over them where the plate has one. */
export function plateSetup(
  mold: MoldBlock,
  plate: PlateFacts,
  shop: Shop,
  set: PlateSet,
): HeatUpSetup {
  const room = { temperature: shop.roomTemperature, pressure: airPressure(shop.elevation) };
  return {
    plate: heatingPlate(mold, plate, room, set),
    molds: [heatingMold(mold, set, set.figures.lossShare * lidShare(plate))],
    roomTemperature: room.temperature,
    pressure: room.pressure,
  };
}

/** The same mold with the lid off. */
export function withoutLid(mold: MoldNetwork, plate: PlateFacts): MoldNetwork {
  return { ...mold, lossShare: mold.lossShare / lidShare(plate) };
}

/** The mold's outside as its heat loss knows it. */
export function finishOf({ finish }: Pick<MoldFacts, 'finish'>): 'anodized' | 'machined' {
  return finish === 'anodized' ? 'anodized' : 'machined';
}

/** Share of the loss that a lid over the molds leaves. */
function lidShare({ lid }: PlateFacts): number {
  return lid === 'lid' ? LID_LOSS_SHARE : 1;
}

function heatingMold(
  mold: MoldBlock,
  { count, figures }: PlateSet,
  lossShare: number,
): HeatingMold {
  const { contactConductance } = figures;
  const specificHeat = DEFAULTS.aluminumSpecificHeat.value;
  const lightest = (QUICKEST * contactConductance) / (specificHeat * mold.blockHeight);
  return {
    length: mold.blockLength,
    width: mold.blockWidth,
    height: mold.blockHeight,
    count,
    contactConductance,
    finish: finishOf(mold),
    lossShare,
    density: Math.max(DEFAULTS.aluminumDensity.value, lightest),
    specificHeat,
  };
}

function heatingPlate(
  mold: MoldBlock,
  plate: PlateFacts,
  room: Room,
  { setting, count, figures }: PlateSet,
): HeatingPlate {
  const wanted = Math.max(setting + figures.dialOffset, room.temperature + HAIR);
  const surface = Math.min(wanted, HOTTEST);
  if (plate.warmUp === 0) return { kind: 'held', setting: surface };
  const { area, perimeter, watts } = plateSize(plate);
  const hot = Math.min(WARM_UP_TO, plate.highestSetting);
  const rise = Math.max(HAIR, hot - room.temperature);
  const face = { kind: 'top', length: area / perimeter, emissivity: DARK } as const;
  const published = faceCoefficient(face, room.temperature + rise, room);
  const lost = Math.min(published, (MOST_LOST * watts) / (rise * area));
  const footprint = count * mold.blockLength * mold.blockWidth;
  const seconds = Math.max(QUICKEST, plate.warmUp);
  const warmUp = { watts, seconds, rise, lossConductance: lost * area };
  const lossConductance = lost * Math.max(0, area - footprint);
  const lightest = QUICKEST * (footprint * figures.contactConductance + lossConductance);
  return {
    kind: 'heated',
    setting: surface,
    watts,
    heatCapacity: Math.max(plateHeatCapacity(warmUp), lightest),
    lossConductance,
    deadBand: plate.deadBand ?? usualDeadBand(plate),
    swing: 'averaged',
  };
}

function usualDeadBand({ kind }: PlateFacts): number {
  return kind === 'thin griddle'
    ? DEFAULTS.deadBandGriddle.value
    : DEFAULTS.deadBandThickPlate.value;
}

/** Cooking plates are coated, painted or oxidized: as dark to heat as an anodized mold. */
const DARK = 0.85;

/** Evenly hot part [m2], its edge [m], and the heater [W]; what Plates leaves out is that of a household griddle. */
export function plateSize({ usableLength, usableWidth, watts }: PlateFacts) {
  const { plateArea, platePower } = DEFAULTS;
  const given =
    usableLength === undefined || usableWidth === undefined
      ? undefined
      : { area: usableLength * usableWidth, perimeter: 2 * (usableLength + usableWidth) };
  const area = given?.area ?? (watts ? watts / platePower.value : plateArea.value);
  const perimeter = given?.perimeter ?? 4 * Math.sqrt(area);
  return { area, perimeter, watts: watts ?? area * platePower.value };
}
