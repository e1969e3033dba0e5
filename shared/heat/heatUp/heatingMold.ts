import { requireNumber } from '../../errors/requireNumber.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { type Face, faceCoefficient, type Room } from './faceCoefficient.ts';

/** What the outside of a mold looks like to heat. */
type Finish = 'machined' | 'used' | 'anodized';

/** One kind of mold on a plate. Everything below the height has a documented default. */
export interface HeatingMold {
  /** Footprint [m], > 0 */
  readonly length: number;
  readonly width: number;
  /** Of the block, stacked halves together [m], > 0 */
  readonly height: number;
  /** How many of them stand on the plate, a whole number >= 1 */
  readonly count?: number;
  /** Plate to block [W/(m2 K)], > 0 */
  readonly contactConductance?: number;
  /** Between two equal halves stacked on each other [W/(m2 K)], > 0; left out for a single block */
  readonly jointConductance?: number;
  readonly finish?: Finish;
  /** Share of the bare loss that remains, > 0: under a lid {@link LID_LOSS_SHARE}, in a draft above 1 */
  readonly lossShare?: number;
  /** Of the metal [kg/m3], > 0, and [J/(kg K)], > 0 */
  readonly density?: number;
  readonly specificHeat?: number;
  /** [°C]; the room's when left out */
  readonly startTemperature?: number;
}

/** A light lid, all around and not touching, hands on what it gets from one air layer to a second: about half is left (0.35 to 0.7). Derived. */
export const LID_LOSS_SHARE = 0.5;

/** A body at one temperature, part of a mold or all of it. */
export interface MoldPart {
  /** [J/K] */
  readonly capacity: number;
  readonly faces: readonly { readonly face: Face; readonly area: number }[];
}

export interface MoldNetwork {
  readonly count: number;
  /** Plate to lowest part, and part to part [W/K] */
  readonly contact: number;
  readonly joint: number;
  readonly lossShare: number;
  /** From the plate upward; one or two */
  readonly parts: readonly MoldPart[];
  readonly start: number;
}

/**
 * A mold as one body, or as two stacked halves, with the faces through which it loses heat.
 * The sides of stacked halves share one boundary layer over the whole height.
 * @throws InputError on a figure out of range
 */
export function moldNetwork(mold: HeatingMold, room: Room): MoldNetwork {
  const {
    contactConductance = DEFAULTS.contactConductanceGriddle.value,
    density = DEFAULTS.aluminumDensity.value,
    specificHeat = DEFAULTS.aluminumSpecificHeat.value,
    lossShare = 1,
    count = 1,
    startTemperature: start = room.temperature,
  } = mold;
  requireMold({ ...mold, contactConductance, density, specificHeat, lossShare, count }, start);
  const area = mold.length * mold.width;
  const around = 2 * (mold.length + mold.width);
  const emissivity = emissivityOf(mold.finish ?? 'machined');
  const halves = mold.jointConductance === undefined ? 1 : 2;
  const side: Face = { kind: 'side', length: mold.height, emissivity };
  const top: Face = { kind: 'top', length: area / around, emissivity };
  const sides = { face: side, area: (around * mold.height) / halves };
  const capacity = (density * specificHeat * area * mold.height) / halves;
  const upper = { capacity, faces: [sides, { face: top, area }] };
  const parts = halves === 1 ? [upper] : [{ capacity, faces: [sides] }, upper];
  const joint = (mold.jointConductance ?? 0) * area;
  return { count, contact: contactConductance * area, joint, lossShare, parts, start };
}

/** Emissivity of a finish, the default figure of its kind. */
function emissivityOf(finish: Finish): number {
  if (finish === 'anodized') return DEFAULTS.emissivityAnodized.value;
  return finish === 'used' ? DEFAULTS.emissivityUsed.value : DEFAULTS.emissivityMachined.value;
}

/**
 * Heat that a part loses to the room.
 * @param temperature - of the part [°C]
 * @returns [W], below 0 when the room is warmer
 */
export function partLoss(
  part: MoldPart,
  temperature: number,
  surroundings: { readonly room: Room; readonly lossShare: number },
): number {
  const { room, lossShare } = surroundings;
  const conductance = part.faces.reduce(
    (sum, { face, area }) => sum + area * faceCoefficient(face, temperature, room),
    0,
  );
  return lossShare * conductance * (temperature - room.temperature);
}

function requireMold(mold: HeatingMold, start: number): void {
  const { jointConductance = 1, contactConductance = 1, density = 1, specificHeat = 1 } = mold;
  requireNumber(mold.length, 'block length', { unit: 'm', greaterThan: 0 });
  requireNumber(mold.width, 'block width', { unit: 'm', greaterThan: 0 });
  requireNumber(mold.height, 'block height', { unit: 'm', greaterThan: 0 });
  requireNumber(mold.count ?? 1, 'molds on the plate', { atLeast: 1, whole: true });
  requireNumber(contactConductance, 'contact conductance', { unit: 'WPerM2K', greaterThan: 0 });
  requireNumber(jointConductance, 'joint conductance', { unit: 'WPerM2K', greaterThan: 0 });
  requireNumber(mold.lossShare ?? 1, 'share of the bare loss', { greaterThan: 0 });
  requireNumber(density, 'metal density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(specificHeat, 'metal specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  requireNumber(start, 'mold start temperature', { unit: 'degC', atLeast: -20, atMost: 300 });
}
