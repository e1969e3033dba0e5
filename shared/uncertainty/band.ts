import { quantile } from './quantile.ts';
import { rankCorrelation, ranks } from './rankCorrelation.ts';

/** Where nine of ten answers fall; an end left out is open. */
export interface AnswerBand<Name extends string = string> {
  readonly low?: number;
  readonly high?: number;
  readonly widest?: Name;
}

/** Ends of the band: nine of ten answers lie between. */
const TAIL = 0.05;

/**
 * A rank correlation below this many times 1 / sqrt(n - 1) may be chance: that is its scatter between unrelated figures, and
 * fourteen of them exceed 3.4 times it less than once in a hundred plans.
 */
const NOISE = 3.4;

/** The figures that were drawn, each as the ranks of its values, so that many answers share one sorting. */
export type DrawnRanks<Name extends string> = ReadonlyMap<Name, readonly number[]>;

/**
 * Band of one answer over all draws: its 5 % and 95 % quantiles, and the figure that moves it most.
 *
 * That figure is the one with the largest absolute rank correlation, where it stands out of the noise and the answers differ.
 * An answer may be +infinity (any time, never); an end there is left out. A band with both ends at one value has no width.
 *
 * @param answers - one per draw, in the order of the draws
 * @throws InputError on no answer, or a figure with more or fewer draws
 */
export function band<Name extends string>(
  answers: readonly number[],
  drawn: DrawnRanks<Name>,
): AnswerBand<Name> {
  const low = quantile(answers, TAIL);
  const high = quantile(answers, 1 - TAIL);
  const widest = low === high ? undefined : strongest(answers, drawn);
  return {
    ...(Number.isFinite(low) ? { low } : {}),
    ...(Number.isFinite(high) ? { high } : {}),
    ...(widest === undefined ? {} : { widest }),
  };
}

function strongest<Name extends string>(
  answers: readonly number[],
  drawn: DrawnRanks<Name>,
): Name | undefined {
  const answerRanks = ranks(answers);
  let found: Name | undefined;
  let most = NOISE / Math.sqrt(answers.length - 1);
  for (const [name, figureRanks] of drawn) {
    const strength = Math.abs(rankCorrelation(answerRanks, figureRanks));
    if (strength > most) [found, most] = [name, strength];
  }
  return found;
}
