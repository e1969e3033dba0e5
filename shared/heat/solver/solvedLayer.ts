import { type BondWindow, windowVerdict } from '../bondWindow.ts';
import { contactTemperature, effusivity } from '../contactTemperature.ts';
import type { LayerReading } from './layerReading.ts';
import type { CompleteStack } from './layerStack.ts';
import { isPast, type LayerWindow, layerWindow, thresholds } from './layerWindow.ts';
import { type Seam, secondsAbove } from './seam.ts';
import { layerMean, type StackState, upperFace } from './stackState.ts';
import type { Stage } from './stage.ts';
import { thinned } from './thinned.ts';
import { walkStack } from './walkStack.ts';

/** One layer's life in the stack. */
export interface SolvedLayer extends LayerWindow {
  /** When it was poured [s] */
  readonly poured: number;
  readonly verdict: BondWindow['verdict'];
  /** With the layer above; none on the last layer */
  readonly seam?: Seam;
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
    ...(next && { seam: seamOf(own, next, covered, stack) }),
    readings: thinned([...uncovered, ...covered]),
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
): LayerWindow {
  const wanted = thresholds(pour, stack.pours[layer + 1], stack);
  // The landing itself: the air draws the face down at once, but nothing has cooled yet.
  const readings = before.map((reading, index) =>
    index === 0 ? { ...reading, surface: pour.temperature } : reading,
  );
  if (before.some((reading) => isPast(reading, wanted))) return layerWindow(readings, wanted);
  for (const state of walkStack(end, [stack.until], stack)) {
    const reading = layerReading(state, layer, stack);
    readings.push(reading);
    if (isPast(reading, wanted)) break;
  }
  return layerWindow(readings, wanted);
}

function seamOf(
  own: Stage,
  next: Stage,
  covered: readonly LayerReading[],
  stack: CompleteStack,
): Seam {
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
