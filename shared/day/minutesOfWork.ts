import { requireNumber } from '../errors/requireNumber.ts';

/** Share of the microwave's running time that a person stands by it: stirring, reading, turning. Common practice, no source. */
const ATTENDED_COOKING = 0.5;

export interface WorkFacts {
  /** Laying out, cleaning the mold, putting away; once a run [s]. */
  readonly setUpTime: number;
  /** Weighing and coloring one cup [s]. */
  readonly colorTime: number;
  readonly cups: number;
  /** Pouring one layer into one cavity and moving on [s]. */
  readonly pourSeconds: number;
  readonly pieces: number;
  readonly layers: number;
  /** Microwave running time of all heatings of all cups [s]. */
  readonly cookingTime: number;
  /** Demolding, inspecting and packing one piece [s]. */
  readonly finishTime: number;
}

/**
 * Hands-on minutes of a run: what it takes of somebody's day, not how long it lasts.
 *
 * set-up + color time x cups + pour seconds x pieces x layers + attended share of cooking + finish time x pieces.
 * Waiting for the plate, for a layer to firm and for the mold to cool is not work and is left out.
 *
 * @param facts - times [s] >= 0; cups, pieces, layers whole numbers >= 1
 * @returns [min]
 * @throws InputError when a time is negative or a count is not a whole number above 0
 */
export function minutesOfWork(facts: WorkFacts): number {
  for (const [field, time] of Object.entries({
    'set-up time': facts.setUpTime,
    'color time': facts.colorTime,
    'pour time per cavity': facts.pourSeconds,
    'cooking time': facts.cookingTime,
    'finish time per piece': facts.finishTime,
  }))
    requireNumber(time, field, { atLeast: 0, unit: 's' });
  for (const field of ['cups', 'pieces', 'layers'] as const)
    requireNumber(facts[field], field, { atLeast: 1, whole: true });
  const pouring = facts.pourSeconds * facts.pieces * facts.layers;
  const seconds =
    facts.setUpTime +
    facts.colorTime * facts.cups +
    pouring +
    ATTENDED_COOKING * facts.cookingTime +
    facts.finishTime * facts.pieces;
  return seconds / 60;
}
