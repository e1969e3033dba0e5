import { requireNumber } from '../errors/requireNumber.ts';

/** One layer poured into every cavity of a round, one cavity after the other, always in the same order. */
export interface PourPass {
  /** Whole, >= 1 */
  readonly cavities: number;
  /** One cavity with moving on [s], > 0 */
  readonly pourSeconds: number;
  /** Cavities until the cup goes back to heat or is changed, whole, >= 1 */
  readonly cavitiesPerHeating: number;
  /** What that takes, nothing poured meanwhile [s], >= 0 */
  readonly stop: number;
}

/** Setting one layer's cup down and taking up the next one's [s]. Common practice, no source. */
export const CHANGE_OF_CUP = 10;

/** Checked once, where a pass is made. @throws InputError on a figure out of range */
export function pourPass(pass: PourPass): PourPass {
  requireNumber(pass.cavities, 'cavities in a round', { whole: true, atLeast: 1 });
  requireNumber(pass.pourSeconds, 'pour time per cavity', { unit: 's', greaterThan: 0 });
  requireNumber(pass.cavitiesPerHeating, 'cavities per heating', { whole: true, atLeast: 1 });
  requireNumber(pass.stop, 'stop to heat the cup', { unit: 's', atLeast: 0 });
  return pass;
}

/**
 * When a cavity is poured, from the first cavity of the pass.
 * @param cavity - 0 for the first
 * @returns [s]
 */
export function pourOffset({ pourSeconds, cavitiesPerHeating, stop }: PourPass, cavity: number) {
  return cavity * pourSeconds + Math.floor(cavity / cavitiesPerHeating) * stop;
}

/** Times that pouring stops within a pass. */
export function stopsIn({ cavities, cavitiesPerHeating }: PourPass): number {
  return Math.floor((cavities - 1) / cavitiesPerHeating);
}

/** From the first pour of a pass to the end of its last [s]. */
export function passTime(pass: PourPass): number {
  return pourOffset(pass, pass.cavities - 1) + pass.pourSeconds;
}

/** How the next layer follows, from one pass to the next. */
export interface PassGap {
  /** First cavity to first cavity [s] */
  readonly start: number;
  /** Wait between the two layers in the same cavity: least and most of the round [s] */
  readonly shortest: number;
  readonly longest: number;
}

/**
 * The soonest that the next layer can follow: this one is whole, the cup is changed, and every cavity has waited long enough.
 * Waits differ from cavity to cavity where the two layers stop at different cavities.
 * @param earliest - least wait in a cavity [s], >= 0
 */
export function passGap(below: PourPass, above: PourPass, earliest: number): PassGap {
  const differences = Array.from(
    { length: Math.min(below.cavities, above.cavities) },
    (_, cavity) => pourOffset(above, cavity) - pourOffset(below, cavity),
  );
  const least = Math.min(...differences);
  const start = Math.max(passTime(below) + CHANGE_OF_CUP, earliest - least);
  return { start, shortest: start + least, longest: start + Math.max(...differences) };
}
