import { completeStack, type LayerStack } from './layerStack.ts';
import { type SolvedLayer, solvedLayer } from './solvedLayer.ts';
import { type StackProfile, stackProfile } from './stackProfile.ts';
import { solveStages } from './stage.ts';

export interface SolvedStack {
  /** Bottom first */
  readonly layers: readonly SolvedLayer[];
  /** End of the time solved [s]; "never", "any time" and "stays open" hold until then */
  readonly until: number;
  /** Over the time solved, per m2 of slab [J/m2]; below 0 where the plastic warms the metal */
  readonly heatFromMold: number;
  readonly heatToAir: number;
  /** One per wanted moment, in order of time; at a pour, just after it */
  readonly profiles: readonly StackProfile[];
}

/**
 * Life of every layer of a stack poured into a hot mold: temperatures, open times, windows, contacts, time at bonding heat.
 *
 * One-dimensional conduction by finite volumes on a growing stack, stepped by TR-BDF2. Below, metal at the mold's own course
 * through a melt-metal conductance; above, air. Windows of a layer are those it would have with nothing poured on it, counted
 * from its own pour. The shape factor stretches time by scaling the heat held. Error of grid and step under 0.5 %.
 * Left out: the moment a pour takes, metal warmed by the plastic, heat of fusion (under 1 K), air trapped between layers,
 * and oil, dust or release agent, which spoil a bond at any temperature. Not for molds that insulate.
 *
 * @throws InputError on a figure out of range, or pours out of order
 * @source INCROPERA, section 5.10; HOSEASHAMPINE, section 2
 */
export function solveLayers(given: LayerStack): SolvedStack {
  const stack = completeStack(given);
  const stages = solveStages(stack);
  const states = stages.flatMap((stage) => stage.states);
  const end = stages[stages.length - 1]?.end;
  return {
    layers: stages.map((stage, layer) => solvedLayer(stage, stages.slice(layer + 1), stack)),
    until: stack.until,
    heatFromMold: end?.heatFromMold ?? 0,
    heatToAir: end?.heatToAir ?? 0,
    profiles: states
      .filter(
        ({ time }, index) => stack.profileTimes.includes(time) && states[index + 1]?.time !== time,
      )
      .map((state) => stackProfile(state, stack)),
  };
}
