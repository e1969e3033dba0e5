import type { CompleteStack } from './layerStack.ts';
import type { StackState } from './stackState.ts';
import { stepStack } from './stepStack.ts';

/** First step after a pour, over the diffusion time L^2 / alpha of the thinnest layer: 34 ms for 3 mm. */
const FIRST_STEP = 3e-4;

/** A step below this is lost in the digits of the clock [s]. */
const LEAST_STEP = 1e-6;

/**
 * The stack step by step with nothing more poured: steps grow with the time since the last pour, as a front slows with the
 * square root of time, and end exactly at every stop.
 *
 * @param state - as the last layer has landed, or later
 * @param stops - moments to meet exactly, in order [s]; the last one ends the walk
 * @returns the states after each step, the given one not among them
 */
export function* simulateStack(
  state: StackState,
  stops: readonly number[],
  stack: CompleteStack,
): Generator<StackState> {
  const poured = stack.pours.slice(0, state.grid.starts.length - 1);
  const last = poured[poured.length - 1];
  const landed = last?.time ?? state.time;
  const first = FIRST_STEP * Math.min(...poured.map(diffusionTime)) * (last?.shapeFactor ?? 1);
  const shortest = Math.max(LEAST_STEP, first);
  let now = state;
  for (const stop of stops) {
    while (now.time < stop) {
      const grown = stack.resolution.stepShare * (now.time - landed);
      const wanted = Math.max(shortest, Math.min(stack.resolution.longestStep, grown));
      const left = stop - now.time;
      // Two even steps rather than a long one and a sliver.
      const width = left <= wanted ? left : Math.min(wanted, left / 2);
      const next = stepStack(now, width, stack);
      now = left <= wanted ? { ...next, time: stop } : next;
      yield now;
    }
  }
}

function diffusionTime(pour: CompleteStack['pours'][number]): number {
  return (pour.thickness ** 2 * pour.density * pour.specificHeat) / pour.conductivity;
}
