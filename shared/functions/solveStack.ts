import { AIR_STATES } from '../heat/solver/airStates.ts';
import { pourWhenFirm } from '../heat/solver/pourWhenFirm.ts';
import type { SolvedLayer } from '../heat/solver/solvedLayer.ts';
import { type SolvedStack, solveLayers } from '../heat/solver/solveLayers.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { CUP_RANGE, MOLD_TOP, SHAPE, THICKNESS } from './heatingMoldOf.ts';

/** Thinner than any film that was ever poured: its steps in time would be lost in the clock's digits [m]. */
const THINNEST = 1e-5;

/** Parameters of the functions that solve a whole stack. */
export const STACK = {
  thicknesses: {
    kind: 'list',
    item: 'layer thickness',
    measure: 'length',
    about: 'Layers, bottom first; rise of volume over wetted metal area for a groove.',
    bounds: { ...THICKNESS.bounds, atLeast: THINNEST },
    most: 12,
  },
  moldTop: { ...MOLD_TOP, about: 'Mold top, held all through the pours.' },
  cupTemperatures: {
    kind: 'list',
    item: 'cup temperature',
    measure: 'temperature',
    about: 'Cup of each layer at its pour, or one for all.',
    bounds: CUP_RANGE,
    matches: { list: 'thicknesses' },
    oneForAll: true,
  },
  gaps: {
    kind: 'list',
    item: 'gap',
    measure: 'seconds',
    about:
      'Seconds from each pour to the next, one fewer than layers, or one for all; blank: each lands as soon as the one below is firm.',
    bounds: { greaterThan: 0, atMost: 3600 },
    matches: { list: 'thicknesses', less: 1 },
    oneForAll: true,
    optional: true,
  },
} as const;
export const STACK_SHAPE = { ...SHAPE, bounds: { atLeast: 0.1, atMost: 3 } } as const;
export const AIR = {
  kind: 'choice',
  about: 'Air over the mold: under a cover, an ordinary bench, beside a fan or a door.',
  choices: ['sheltered', 'normal', 'drafty'],
  default: 'normal',
} as const;

interface Stack {
  readonly thicknesses: readonly number[];
  readonly moldTop: number;
  readonly cupTemperatures: readonly number[];
  readonly gaps: readonly number[];
  readonly shapeFactor: number;
  readonly air: keyof typeof AIR_STATES;
}

/** How long a stack is followed after its last pour at least [s]. */
const TAIL = 1200;

/**
 * The stack solved as planned, or each layer landing as soon as the one below is firm where no gaps are given; then fewer
 * layers come back where one never gets firm.
 * @param wanted - bond temperature [°C], and how long to follow it from the first pour [s]
 */
export function solveStack(
  stack: Stack,
  { follow = 0, ...wanted }: { readonly bondTemperature?: number; readonly follow?: number },
): SolvedStack {
  const layers = stack.thicknesses.map((thickness, index) => ({
    thickness,
    temperature: (stack.cupTemperatures[index] ?? Number.NaN) - DEFAULTS.pourLoss.value,
  }));
  const { moldTop: mold, shapeFactor } = stack;
  const place = { mold, air: AIR_STATES[stack.air], shapeFactor, ...wanted };
  const pours =
    stack.gaps.length === 0 ? pourWhenFirm(layers, place) : pourAfter(layers, stack.gaps);
  const last = pours[pours.length - 1]?.time ?? 0;
  return solveLayers({ ...place, pours, until: Math.max(follow, last + TAIL) });
}

function pourAfter<Layer>(layers: readonly Layer[], gaps: readonly number[]) {
  let time = 0;
  return layers.map((layer, index) => {
    if (index > 0) time += gaps[index - 1] ?? 0;
    return { ...layer, time };
  });
}

/** A layer that waits in vain for the one below it. */
export function notPoured(below: number): string {
  return `not poured: layer ${below} never gets firm; give the gaps, or a cooler mold`;
}

/** Seconds, or the words for none. */
export function secondsOr(
  answer: SolvedLayer['open'] | SolvedLayer['earliest'] | SolvedLayer['latest'],
): number | string {
  return answer.kind === 'seconds' ? answer.seconds : answer.kind;
}
