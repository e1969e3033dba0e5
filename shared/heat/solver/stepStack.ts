import { entry } from './entry.ts';
import type { CompleteStack } from './layerStack.ts';
import { type Eliminated, eliminate, solveTridiagonal } from './solveTridiagonal.ts';
import type { StackState } from './stackState.ts';

/** Share of the step that is implicit at each stage: gamma / 2 with gamma = 2 - sqrt 2, so both stages share one matrix. */
const IMPLICIT = 1 - Math.SQRT1_2;
/** Weight of the step's start and of its middle stage in the whole step: sqrt 2 / 4. */
const WEIGHT = Math.SQRT1_2 / 2;

/** A figure at the start of a step, at its middle stage and at its end. */
type Stages = readonly [number, number, number];

/**
 * The stack one step later, by TR-BDF2: trapezoid to gamma of the step, then second-order backward differences to its end.
 *
 * Second order, and stiff modes die out within a step, which a pour onto a cooled layer needs. Both stages are balances of
 * fluxes, so the heat that crosses mold and surface adds up to the heat stored, whatever the step.
 *
 * @param width - of the step [s], > 0
 * @source HOSEASHAMPINE, section 2
 */
export function stepStack(state: StackState, width: number, stack: CompleteStack): StackState {
  const { grid, temperatures: start, time } = state;
  const last = start.length - 1;
  const implicit = IMPLICIT * width;
  const wall = entry(grid.conductances, 0);
  const surface = entry(grid.conductances, last + 1);
  const air = surface * stack.air.airTemperature;
  const mold: Stages = [
    wall * stack.moldAt(time),
    wall * stack.moldAt(time + 2 * implicit),
    wall * stack.moldAt(time + width),
  ];
  const sources = { mold, air };
  const matrix = eliminate(grid, implicit);
  const middle = trapezoid(state, implicit, sources, matrix);
  const end = backward(state, implicit, sources, { matrix, middle });
  const at = (cell: number): Stages => [entry(start, cell), entry(middle, cell), entry(end, cell)];
  return {
    time: time + width,
    grid,
    temperatures: end,
    heatFromMold: state.heatFromMold + crossing(mold, wall, at(0)) * width,
    heatToAir: state.heatToAir - crossing([air, air, air], surface, at(last)) * width,
  };
}

interface Sources {
  readonly mold: Stages;
  readonly air: number;
}

/** C (T - T_start) = implicit (flux_start + flux) at the middle stage; mold and air join after the loop. */
function trapezoid(
  { grid, temperatures }: StackState,
  implicit: number,
  { mold, air }: Sources,
  matrix: Eliminated,
): Float64Array {
  const { capacities, conductances } = grid;
  const right = new Float64Array(temperatures.length);
  let here = entry(temperatures, 0);
  let fromBelow = -entry(conductances, 0) * here;
  for (let cell = 0; cell < right.length; cell += 1) {
    const next = cell + 1 < right.length ? entry(temperatures, cell + 1) : 0;
    const fromAbove = entry(conductances, cell + 1) * (next - here);
    right[cell] = entry(capacities, cell) * here + implicit * (fromBelow + fromAbove);
    fromBelow = -fromAbove;
    here = next;
  }
  addTo(right, 0, implicit * (mold[0] + mold[1]));
  addTo(right, right.length - 1, implicit * 2 * air);
  return solveTridiagonal(matrix, right);
}

/** C (T - T_start) = weight (flux_start + flux_middle) + implicit flux; the first sum is known from the middle stage. */
function backward(
  { grid, temperatures }: StackState,
  implicit: number,
  { mold, air }: Sources,
  { matrix, middle }: { readonly matrix: Eliminated; readonly middle: Float64Array },
): Float64Array {
  const right = new Float64Array(middle.length);
  for (let cell = 0; cell < right.length; cell += 1) {
    const start = entry(temperatures, cell);
    const rise = entry(middle, cell) - start;
    right[cell] = entry(grid.capacities, cell) * (start + (WEIGHT / IMPLICIT) * rise);
  }
  addTo(right, 0, implicit * mold[2]);
  addTo(right, right.length - 1, implicit * air);
  return solveTridiagonal(matrix, right);
}

/** Mean flux into an outer cell over the step, with the weights of the step itself [W/m2]. */
function crossing(sources: Stages, conductance: number, cell: Stages): number {
  const flux = (stage: 0 | 1 | 2) => sources[stage] - conductance * cell[stage];
  return WEIGHT * (flux(0) + flux(1)) + IMPLICIT * flux(2);
}

function addTo(values: Float64Array, index: number, amount: number): void {
  values[index] = entry(values, index) + amount;
}
