import { entry } from './entry.ts';
import type { CompletePour, CompleteStack } from './layerStack.ts';
import { type StackGrid, stackGrid } from './stackGrid.ts';

/** The stack at one moment. */
export interface StackState {
  /** [s] */
  readonly time: number;
  readonly grid: StackGrid;
  /** Per cell, from the metal up [°C] */
  readonly temperatures: Float64Array;
  /** Since the first pour, per m2 of slab [J/m2] */
  readonly heatFromMold: number;
  readonly heatToAir: number;
}

/** The stack just after one more layer has landed on it. */
export function landLayer(
  before: StackState | undefined,
  poured: readonly CompletePour[],
  stack: CompleteStack,
): StackState {
  const grid = stackGrid(poured, stack);
  const pour = poured[poured.length - 1];
  const temperatures = new Float64Array(grid.capacities.length).fill(pour?.temperature ?? 0);
  if (before !== undefined) temperatures.set(before.temperatures);
  const { heatFromMold = 0, heatToAir = 0 } = before ?? {};
  return { time: pour?.time ?? 0, grid, temperatures, heatFromMold, heatToAir };
}

/**
 * Temperature of a layer's upper face: the free surface, or the joint with the layer above.
 * At a joint the flux is one on both sides, T = (T1 r2 + T2 r1) / (r1 + r2) with half-cell resistances r.
 * @returns [°C]
 */
export function upperFace(state: StackState, layer: number, stack: CompleteStack): number {
  const { temperatures, grid } = state;
  const above = grid.starts[layer + 1] ?? 0;
  const below = above - 1;
  const here = entry(temperatures, below);
  const half = entry(grid.halves, below);
  if (above === temperatures.length) {
    const { airTemperature } = stack.air;
    return here - entry(grid.conductances, above) * (here - airTemperature) * half;
  }
  const halfAbove = entry(grid.halves, above);
  return (here * halfAbove + entry(temperatures, above) * half) / (half + halfAbove);
}

/** Mean temperature of a layer, weighted by heat capacity [°C]. */
export function layerMean({ temperatures, grid }: StackState, layer: number): number {
  const end = grid.starts[layer + 1] ?? 0;
  let heat = 0;
  let capacity = 0;
  for (let cell = grid.starts[layer] ?? 0; cell < end; cell += 1) {
    heat += entry(grid.capacities, cell) * entry(temperatures, cell);
    capacity += entry(grid.capacities, cell);
  }
  return heat / capacity;
}
