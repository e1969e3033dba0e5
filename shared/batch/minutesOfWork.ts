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

/** Hands-on time of a run by what is done [s]. */
export interface WorkTimes {
  readonly setUp: number;
  /** Weighing and coloring */
  readonly coloring: number;
  /** Standing by the microwave */
  readonly heating: number;
  readonly pouring: number;
  /** Demolding, inspecting, packing */
  readonly finishing: number;
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
  const { setUp, coloring, heating, pouring, finishing } = workTimes(facts);
  return (setUp + coloring + pouring + heating + finishing) / 60;
}

/**
 * The same time by what is done; its parts add up to {@link minutesOfWork}.
 * @returns [s]
 * @throws InputError as {@link minutesOfWork}
 */
export function workTimes(facts: WorkFacts): WorkTimes {
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
  return {
    setUp: facts.setUpTime,
    coloring: facts.colorTime * facts.cups,
    heating: ATTENDED_COOKING * facts.cookingTime,
    pouring: facts.pourSeconds * facts.pieces * facts.layers,
    finishing: facts.finishTime * facts.pieces,
  };
}
