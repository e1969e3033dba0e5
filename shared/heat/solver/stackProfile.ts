import { entry } from './entry.ts';
import type { CompleteStack } from './layerStack.ts';
import { type StackState, upperFace } from './stackState.ts';

/** Temperature over the height of the stack at one moment. */
export interface StackProfile {
  /** [s] */
  readonly time: number;
  /** From the metal to the free surface, joints included once [m] */
  readonly heights: readonly number[];
  /** One per height [°C] */
  readonly temperatures: readonly number[];
}

/** Profile with the plastic's own faces: at the metal, at every joint, at the free surface. */
export function stackProfile(state: StackState, stack: CompleteStack): StackProfile {
  const { grid, temperatures, time } = state;
  const first = entry(temperatures, 0);
  const flux = entry(grid.conductances, 0) * (stack.moldAt(time) - first);
  const heights = [0];
  const values = [first + flux * entry(grid.halves, 0)];
  let top = 0;
  stack.pours.slice(0, grid.starts.length - 1).forEach((pour, layer) => {
    const end = grid.starts[layer + 1] ?? 0;
    for (let cell = grid.starts[layer] ?? 0; cell < end; cell += 1) {
      heights.push(entry(grid.middles, cell));
      values.push(entry(temperatures, cell));
    }
    top += pour.thickness;
    heights.push(top);
    values.push(upperFace(state, layer, stack));
  });
  return { time, heights, temperatures: values };
}
