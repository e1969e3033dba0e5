import { requireNumber } from '../../errors/requireNumber.ts';
import { type LogisticCurve, logisticFit } from '../logistic/logisticFit.ts';
import { type LogisticMethod, passChance } from '../logistic/logisticLogLikelihood.ts';
import { squaredNormal } from '../logistic/logisticThreshold.ts';

/** A round whose mold top was read. */
export interface ReadRound {
  /** [degC] */
  readonly moldTop: number;
  readonly poured: number;
  readonly good: number;
}

/** Chance of a good piece at a mold top, and the band that holds the curve there. */
interface YieldAt {
  /** [degC] */
  readonly moldTop: number;
  readonly rate: number;
  readonly low: number;
  readonly high: number;
}

export type YieldCurve =
  | {
      readonly kind: 'curve';
      /** Firth's where a temperature parts good from bad, so that likelihood alone has no answer. */
      readonly method: LogisticMethod;
      /** How much more rounds differ than pieces that fail one by one would; 1 where they do not. */
      readonly dispersion: number;
      readonly direction: 'hotter is better' | 'hotter is worse' | 'no clear change';
      readonly points: readonly YieldAt[];
    }
  | {
      readonly kind: 'no curve';
      readonly because: 'fewer than two rounds' | 'one temperature' | 'all good' | 'all bad';
    };

const CONFIDENCE = 0.95;
/** Readings that lie within this of each other are one temperature: no probe tells them apart [K]. */
const TELLS_APART = 0.01;
/** Points of the curve, the lowest and the highest reading among them. */
const POINTS = 41;

/**
 * Share of good pieces against the mold top: logistic curve of greatest likelihood with its pointwise 95 % band.
 *
 * ln(p / (1 - p)) = b0 + b1 T; band b0 + b1 T -+ 1.96 sqrt(phi v(T)), phi = sum (good - n p)^2 / (n p (1 - p)) over
 * (rounds - 2), at least 1: pieces of one round share its mold and fail together.
 * Between the readings only; a curve that climbs to all good cannot show losses that have nothing to do with heat.
 *
 * @throws InputError on a figure out of range
 * @source MCCULLAGHNELDER, section 4.5 (dispersion); FIRTH1993 for data that a temperature parts
 */
export function yieldCurve(rounds: readonly ReadRound[]): YieldCurve {
  for (const { moldTop, poured, good } of rounds) {
    requireNumber(moldTop, 'mold top');
    requireNumber(poured, 'poured', { atLeast: 1, whole: true });
    requireNumber(good, 'good', { atLeast: 0, atMost: poured, whole: true });
  }
  if (rounds.length < 2) return { kind: 'no curve', because: 'fewer than two rounds' };
  const tops = rounds.map(({ moldTop }) => moldTop);
  if (Math.max(...tops) - Math.min(...tops) < TELLS_APART)
    return { kind: 'no curve', because: 'one temperature' };
  const points = rounds.map(({ moldTop, poured, good }) => ({
    at: moldTop,
    passed: good,
    of: poured,
  }));
  const likeliest = logisticFit(points, 'likelihood');
  const fit =
    likeliest.kind === 'no fit' && likeliest.because === 'apart'
      ? logisticFit(points, 'firth')
      : likeliest;
  if (fit.kind === 'no fit') return { kind: 'no curve', because: REASONS[fit.because] };
  return curveOf(fit, rounds);
}

const REASONS = {
  nothing: 'fewer than two rounds',
  apart: 'one temperature',
  'one figure': 'one temperature',
  'all passed': 'all good',
  'all failed': 'all bad',
} as const;

function curveOf(fit: LogisticCurve, rounds: readonly ReadRound[]): YieldCurve {
  const dispersion = dispersionOf(fit, rounds);
  const z2 = squaredNormal(CONFIDENCE);
  const { slope, covariance } = fit;
  const isClear = slope ** 2 > z2 * dispersion * covariance.slope;
  const tops = rounds.map(({ moldTop }) => moldTop);
  const [least, greatest] = [Math.min(...tops), Math.max(...tops)];
  return {
    kind: 'curve',
    method: fit.method,
    dispersion,
    direction: !isClear ? 'no clear change' : slope > 0 ? 'hotter is better' : 'hotter is worse',
    points: Array.from({ length: POINTS }, (_, index) =>
      yieldAt(fit, least + ((greatest - least) * index) / (POINTS - 1), z2 * dispersion),
    ),
  };
}

function yieldAt(
  { intercept, slope, covariance }: LogisticCurve,
  at: number,
  spread: number,
): YieldAt {
  const variance = covariance.intercept + 2 * at * covariance.both + at ** 2 * covariance.slope;
  const half = Math.sqrt(Math.max(0, spread * variance));
  return {
    moldTop: at,
    rate: passChance(intercept, slope, at),
    low: passChance(intercept - half, slope, at),
    high: passChance(intercept + half, slope, at),
  };
}

function dispersionOf({ intercept, slope }: LogisticCurve, rounds: readonly ReadRound[]): number {
  if (rounds.length <= 2) return 1;
  const squares = rounds.reduce((sum, { moldTop, poured, good }) => {
    const chance = passChance(intercept, slope, moldTop);
    const variance = poured * chance * passChance(-intercept, -slope, moldTop);
    return variance === 0 ? sum : sum + (good - poured * chance) ** 2 / variance;
  }, 0);
  return Math.max(1, squares / (rounds.length - 2));
}
