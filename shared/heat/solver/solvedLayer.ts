import { type BondWindow, windowVerdict } from '../bondWindow.ts';
import { contactTemperature, effusivity } from '../contactTemperature.ts';
import { decimatedReadings } from './decimatedReadings.ts';
import type { LayerReading } from './layerReading.ts';
import type { CompleteStack } from './layerStack.ts';
import { isPast, layerWindow, type SolvedWindow, thresholds } from './layerWindow.ts';
import { type SolvedJoint, secondsAbove } from './secondsAbove.ts';
import { simulateStack } from './simulateStack.ts';
import { layerMean, type StackState, upperFace } from './stackState.ts';
import type { Stage } from './stage.ts';

/** One layer's life in the stack. */
export interface SolvedLayer extends SolvedWindow {
  /** When it was poured [s] */
  readonly poured: number;
  readonly verdict: BondWindow['verdict'];
  /** With the layer above; none on the last layer */
  readonly joint?: SolvedJoint;
  /** From its pour to the end of the time solved, thinned; two at the moment a layer lands, just before and just after */
  readonly readings: readonly LayerReading[];
}

/**
 * One layer's figures from the solved stages.
 * @param above - the stages from the layer's own on
 */
export function solvedLayer(
  own: Stage,
  above: readonly Stage[],
  stack: CompleteStack,
): SolvedLayer {
  const uncovered = own.states.map((state) => layerReading(state, own.layer, stack));
  const covered = above.flatMap(({ states }) =>
    states.map((state) => layerReading(state, own.layer, stack)),
  );
  const window = uncoveredWindow(own, uncovered, stack);
  const [next] = above;
  return {
    ...window,
    poured: own.pour.time,
    verdict: windowVerdict(window.earliest, window.latest),
    ...(next && { joint: jointOf(own, next, covered, stack) }),
    readings: decimatedReadings([...uncovered, ...covered]),
  };
}

function layerReading(state: StackState, layer: number, stack: CompleteStack): LayerReading {
  const surface = upperFace(state, layer, stack);
  return { time: state.time, mean: layerMean(state, layer), surface };
}

/** Goes on without the pours that follow, as far as the window still needs it. */
function uncoveredWindow(
  { layer, pour, end }: Stage,
  before: readonly LayerReading[],
  stack: CompleteStack,
): SolvedWindow {
  const wanted = thresholds(pour, stack.pours[layer + 1], stack);
  // The landing itself: the air draws the face down at once, but nothing has cooled yet.
  const readings = before.map((reading, index) =>
    index === 0 ? { ...reading, surface: pour.temperature } : reading,
  );
  if (before.some((reading) => isPast(reading, wanted))) return layerWindow(readings, wanted);
  for (const state of simulateStack(end, [stack.until], stack)) {
    const reading = layerReading(state, layer, stack);
    readings.push(reading);
    if (isPast(reading, wanted)) break;
  }
  return layerWindow(readings, wanted);
}

function jointOf(
  own: Stage,
  next: Stage,
  covered: readonly LayerReading[],
  stack: CompleteStack,
): SolvedJoint {
  const surfaceBefore = upperFace(own.end, own.layer, stack);
  const contact = contactTemperature(
    { temperature: surfaceBefore, effusivity: effusivity(own.pour) },
    { temperature: next.pour.temperature, effusivity: effusivity(next.pour) },
  );
  return {
    surfaceBefore,
    contactTemperature: contact,
    secondsAboveBond: secondsAbove(covered, stack.bondTemperature),
    verdict: contact >= stack.bondTemperature ? 'bonds' : 'peels',
  };
}
