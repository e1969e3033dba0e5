import type { CompletePour, CompleteStack } from './layerStack.ts';
import { simulateStack } from './simulateStack.ts';
import { landLayer, type StackState } from './stackState.ts';

/** The stack from one pour to the next. */
export interface Stage {
  /** Place of the poured layer, 0 at the metal */
  readonly layer: number;
  readonly pour: CompletePour;
  /** From the landing to the moment just before the next pour */
  readonly states: readonly StackState[];
  readonly end: StackState;
}

/** All stages of a stack, in order. */
export function solveStages(stack: CompleteStack): readonly Stage[] {
  const stages: Stage[] = [];
  stack.pours.forEach((pour, layer) => {
    const before = stages[layer - 1]?.end;
    const landed = landLayer(before, stack.pours.slice(0, layer + 1), stack);
    const end = stack.pours[layer + 1]?.time ?? stack.until;
    const stops = stack.profileTimes.filter((time) => time > landed.time && time < end);
    stops.sort((one, other) => one - other);
    const states = [landed, ...simulateStack(landed, [...stops, end], stack)];
    stages.push({ layer, pour, states, end: states[states.length - 1] ?? landed });
  });
  return stages;
}
