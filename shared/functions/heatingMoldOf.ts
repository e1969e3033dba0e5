import type { BlockInRoom } from '../heat/heatUp/blockInRoom.ts';
import type { HeatingMold } from '../heat/heatUp/heatingMold.ts';
import type { HeatingPlate } from '../heat/heatUp/heatingPlate.ts';
import type { LayerInMold } from '../heat/layerInMold.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { formatFixed } from '../units/formatPlain.ts';
import { MEASURES, type UnitSystem } from '../units/measures.ts';
import { fromEngine } from '../units/toEngine.ts';
import { UNITS } from '../units/units.ts';

/** Parameters that several heat functions share, declared once. */
export const CUP_RANGE = { greaterThan: 20, atMost: 250 } as const;
export const TARGET = {
  kind: 'number',
  measure: 'temperature',
  about: 'What the mold top must read.',
  bounds: { greaterThan: 0, atMost: 250 },
} as const;
export const SETTING = {
  kind: 'number',
  field: 'plate setting',
  measure: 'temperature',
  about: 'What the plate is set to.',
  bounds: { greaterThan: 0, atMost: 400 },
} as const;
export const ROOM = {
  kind: 'number',
  field: 'room temperature',
  measure: 'temperature',
  about: 'Air around the plate.',
  bounds: { atLeast: -20, atMost: 60 },
  default: DEFAULTS.roomTemperature.value,
} as const;
export const FINISH = {
  kind: 'choice',
  about: 'Anodized metal loses more heat.',
  choices: ['bare', 'anodized'],
  default: 'bare',
} as const;
/** A quarter of an inch to five feet: thinner metal would follow its plate within a second. */
const SIDE = { atLeast: 0.00635, atMost: 1.524 } as const;
export const BLOCK_ONLY = {
  blockLength: {
    kind: 'number',
    measure: 'length',
    about: 'Outside of the block.',
    bounds: SIDE,
  },
  blockWidth: {
    kind: 'number',
    measure: 'length',
    about: 'Outside of the block.',
    bounds: SIDE,
  },
  blockHeight: {
    kind: 'number',
    measure: 'length',
    about: 'From the plate to the mold top.',
    bounds: SIDE,
  },
} as const;
export const BLOCK = {
  ...BLOCK_ONLY,
  contactConductance: {
    kind: 'number',
    measure: 'conductance',
    about:
      'How well heat passes from plate to mold: 100 on a thin griddle, 500 on a flat thick plate, until fitted.',
    bounds: { greaterThan: 0, atMost: 20_000 },
    default: DEFAULTS.contactConductanceGriddle.value,
  },
  room: ROOM,
  finish: FINISH,
} as const;
export const WARM_UP = {
  kind: 'number',
  field: 'warm-up',
  measure: 'minutes',
  about: 'Minutes the plate itself takes from cold to its setting.',
  bounds: { atLeast: 0, atMost: 7200 },
  default: 0,
} as const;
export const THICKNESS = {
  kind: 'number',
  measure: 'length',
  about: 'Of the layer; volume over wetted metal area for a groove.',
  bounds: { greaterThan: 0, atMost: 0.1 },
} as const;
export const MOLD_TOP = {
  kind: 'number',
  field: 'mold top',
  measure: 'temperature',
  about: 'Mold top at the pour.',
  bounds: { atLeast: -20, atMost: 250 },
} as const;
export const POUR = {
  kind: 'number',
  field: 'pour temperature',
  measure: 'temperature',
  about: 'Cup temperature at the pour.',
  bounds: { greaterThan: 20, atMost: 250 },
  default: DEFAULTS.pourTemperature.value,
} as const;
export const SHAPE = {
  kind: 'number',
  about:
    '1 for a slab, about 1.2 for a groove ten times as wide as deep, 1.45 at four times, 1.55 for a square one.',
  bounds: { greaterThan: 0, atMost: 3 },
  default: 1,
} as const;

interface Block {
  readonly blockLength: number;
  readonly blockWidth: number;
  readonly blockHeight: number;
  readonly contactConductance: number;
  readonly room: number;
  readonly finish: 'bare' | 'anodized';
}

/** The block for the path whose loss varies with temperature. */
export function heatingMoldOf({
  contactConductance,
  ...block
}: Omit<Block, 'room' | 'contactConductance'> &
  Partial<Pick<Block, 'contactConductance'>>): HeatingMold {
  return {
    length: block.blockLength,
    width: block.blockWidth,
    height: block.blockHeight,
    ...(contactConductance === undefined ? {} : { contactConductance }),
    finish: block.finish === 'anodized' ? 'anodized' : 'machined',
  };
}

/** The block alone in its room. */
export function blockOf({
  room,
  ...block
}: Parameters<typeof heatingMoldOf>[0] & Pick<Block, 'room'>): BlockInRoom {
  return { mold: heatingMoldOf(block), roomTemperature: room };
}

/** So heavy that no mold slows it [J/K]. */
const UNMOVED = 1e9;

/** A plate at its setting, or one that climbs to it in a straight line whatever stands on it. */
export function rampPlate(setting: number, room: number, warmUp: number): HeatingPlate {
  if (warmUp === 0) return { kind: 'held', setting };
  const watts = (UNMOVED * (setting - room)) / warmUp;
  return { kind: 'heated', setting, watts, heatCapacity: UNMOVED, lossConductance: 0, deadBand: 0 };
}

export function layerOf(layer: {
  readonly thickness: number;
  readonly moldTop: number;
  readonly pour: number;
  readonly shapeFactor: number;
}): LayerInMold {
  return {
    thickness: layer.thickness,
    startTemperature: layer.pour - DEFAULTS.pourLoss.value,
    moldTemperature: layer.moldTop,
    shapeFactor: layer.shapeFactor,
  };
}

/** A temperature in whole degrees of the system, with its unit. */
export function wholeTemperatureText(temperature: number, system: UnitSystem): string {
  const unit = MEASURES.temperature[system];
  return `${formatFixed(fromEngine(temperature, unit), 0)} ${UNITS[unit].label}`;
}

/** Why a mold does not get hot, and the setting that would do. */
export function notReached(plateau: number, needed: number, system: UnitSystem): string {
  return `not reached: the mold top settles at ${wholeTemperatureText(plateau, system)}; set the plate to ${wholeTemperatureText(Math.ceil(needed), system)} or more`;
}

/** Why no setting of the dial will do. */
export function pastDial(needed: number, highest: number, system: UnitSystem): string {
  return `not reached: the dial ends at ${wholeTemperatureText(highest, system)} and ${wholeTemperatureText(needed, system)} is needed; cover the mold, or a flatter contact`;
}
