import { requireGreater } from '../../errors/requireGreater.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { AIR_STATES, type SurfaceAir } from './airStates.ts';
import { type MoldCourse, moldAt } from './moldCourse.ts';

/** One layer as it lands: the whole layer at once, at one temperature. */
export interface Pour {
  /** Since the start of the run [s], >= 0, later than the pour before */
  readonly time: number;
  /** Of a slab; rise of volume over wetted metal area in any other cavity, see `layerThicknesses` [m], > 0 */
  readonly thickness: number;
  /** As it lands: the cup's, less the loss while pouring [°C] */
  readonly temperature: number;
  /** [W/(m K)], > 0 */
  readonly conductivity?: number;
  /** At working heat [kg/m3], > 0 */
  readonly density?: number;
  /** [J/(kg K)], > 0 */
  readonly specificHeat?: number;
  /** Of the stack from this pour to the next; the stack's own when left out */
  readonly shapeFactor?: number;
  /** Of this plastic [°C]; the stack's own when left out */
  readonly setTemperature?: number;
}

/** How finely space and time are cut. The defaults leave less than 0.5 %. */
export interface Resolution {
  /** Whole, >= 2 */
  readonly cellsPerLayer: number;
  /** Step over the time since the last pour, > 0 */
  readonly stepShare: number;
  /** [s], > 0; a mold's own time constant is some ten minutes */
  readonly longestStep: number;
}

/** A stack of layers poured one on another into a hot mold. Everything below `mold` has a documented default. */
export interface LayerStack {
  readonly pours: readonly Pour[];
  readonly mold: MoldCourse;
  /** One of `DRAFTS`, or the shop's own */
  readonly air?: SurfaceAir;
  /** Plastic to metal [W/(m2 K)], > 0 */
  readonly wallCoefficient?: number;
  /** Every time over that of a slab: 1 for a slab, about 1.2 for a wide groove, 1.6 for a square one; > 0 */
  readonly shapeFactor?: number;
  /** End of the time solved [s], after the last pour; 20 minutes after it when left out */
  readonly until?: number;
  /** Mean at which a layer stops moving [°C] */
  readonly setTemperature?: number;
  /** Surface below which a layer no longer mixes with the next [°C] */
  readonly firmTemperature?: number;
  /** Contact temperature above which layers bond [°C] */
  readonly bondTemperature?: number;
  /** Of a pour that might follow the last one, as it lands [°C]; the last pour's own when left out */
  readonly followingPour?: number;
  /** Moments at which the whole profile is wanted [s] */
  readonly profileTimes?: readonly number[];
  readonly resolution?: Partial<Resolution>;
}

/** How long after the last pour the solution goes on: the shop still pours a layer 20 minutes later. */
const TAIL = 20 * 60;
/** Against the exact series over the working range these leave at most 0.3 % of any time: see docs/layer-timing.md. */
const RESOLUTION: Resolution = { cellsPerLayer: 16, stepShare: 0.07, longestStep: 20 };

export type CompletePour = Required<Pour>;

/** A stack with every default filled in, every figure checked, and its mold as a function. */
export interface CompleteStack extends Required<Omit<LayerStack, 'pours' | 'mold' | 'resolution'>> {
  readonly resolution: Resolution;
  readonly pours: readonly CompletePour[];
  readonly moldAt: (time: number) => number;
}

/** @throws InputError on a figure out of range, no pour, or pours out of order */
export function completeStack({ mold, ...stack }: LayerStack): CompleteStack {
  requireNumber(stack.pours.length, 'number of pours', { atLeast: 1 });
  const { shapeFactor = 1, setTemperature = DEFAULTS.setTemperature.value } = stack;
  const pours = stack.pours.map((pour) => completePour({ shapeFactor, setTemperature, ...pour }));
  pours.forEach(requireAfterPrevious);
  const last = pours[pours.length - 1];
  const complete = {
    air: AIR_STATES.normal,
    wallCoefficient: DEFAULTS.meltToMold.value,
    until: (last?.time ?? 0) + TAIL,
    firmTemperature: DEFAULTS.firmTemperature.value,
    bondTemperature: DEFAULTS.bondTemperature.value,
    followingPour: last?.temperature ?? Number.NaN,
    profileTimes: [],
    ...stack,
    resolution: { ...RESOLUTION, ...stack.resolution },
    shapeFactor,
    setTemperature,
    pours,
    moldAt: moldAt(mold),
  };
  requireFigures(complete);
  return complete;
}

function completePour(
  pour: Pour & Pick<CompletePour, 'shapeFactor' | 'setTemperature'>,
): CompletePour {
  const complete = {
    conductivity: DEFAULTS.conductivity.value,
    density: DEFAULTS.hotDensity.value,
    specificHeat: DEFAULTS.specificHeat.value,
    ...pour,
  };
  requireNumber(complete.time, 'time of the pour', { unit: 's', atLeast: 0 });
  requireNumber(complete.thickness, 'layer thickness', { unit: 'm', greaterThan: 0 });
  requireNumber(complete.temperature, 'pour temperature', { unit: 'degC' });
  requireNumber(complete.conductivity, 'conductivity', { unit: 'WPerMK', greaterThan: 0 });
  requireNumber(complete.density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(complete.specificHeat, 'specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  requireNumber(complete.shapeFactor, 'shape factor', { greaterThan: 0 });
  requireNumber(complete.setTemperature, 'set temperature', { unit: 'degC' });
  return complete;
}

function requireAfterPrevious(pour: Pour, index: number, pours: readonly Pour[]): void {
  const before = pours[index - 1];
  if (before === undefined) return;
  const earlier = { field: 'time of the pour before', value: before.time };
  requireGreater({ field: 'time of the pour', value: pour.time }, earlier, 's');
}

function requireFigures(stack: CompleteStack): void {
  const { air, resolution } = stack;
  const loss = { unit: 'WPerM2K', atLeast: 0 } as const;
  requireNumber(air.coefficient, 'heat loss of the free surface', loss);
  requireNumber(air.airTemperature, 'air temperature', { unit: 'degC' });
  const wall = { unit: 'WPerM2K', greaterThan: 0 } as const;
  requireNumber(stack.wallCoefficient, 'plastic to mold conductance', wall);
  const lastPour = stack.pours[stack.pours.length - 1]?.time ?? 0;
  requireNumber(stack.until, 'end of the time solved', { unit: 's', greaterThan: lastPour });
  requireNumber(stack.firmTemperature, 'firm temperature', { unit: 'degC' });
  requireNumber(stack.bondTemperature, 'bond temperature', { unit: 'degC' });
  requireNumber(stack.followingPour, 'next pour temperature', { unit: 'degC' });
  const span = { unit: 's', atLeast: stack.pours[0]?.time ?? 0, atMost: stack.until } as const;
  for (const time of stack.profileTimes) requireNumber(time, 'time of a profile', span);
  requireNumber(resolution.cellsPerLayer, 'cells per layer', { whole: true, atLeast: 2 });
  requireNumber(resolution.stepShare, 'step over time', { greaterThan: 0 });
  requireNumber(resolution.longestStep, 'longest step', { unit: 's', greaterThan: 0 });
}
