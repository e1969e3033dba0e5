import { chanceOfEnough } from '../../batch/piecesToPour.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import { type RulePoint, runSignals, type Signal } from './runSignals.ts';

/** Pieces of one run. */
export interface Sample {
  readonly poured: number;
  readonly bad: number;
}

interface SharePoint extends Sample {
  /** Bad of poured, 0 to 1. */
  readonly share: number;
  /** Limits at three standard deviations, kept within 0 to 1. */
  readonly lower: number;
  readonly upper: number;
}

export interface PChart {
  readonly kind: 'chart';
  /** Bad of all poured in the points that the limits come from. */
  readonly center: number;
  readonly points: readonly SharePoint[];
  readonly signals: readonly Signal[];
  /** Points that the limits come from. */
  readonly base: number;
}

export type PChartResult = PChart | NoChart;

/** Why there is no chart. */
export interface NoChart {
  readonly kind: 'no chart';
  readonly because: 'fewer than two points';
}

/** Points after which limits no longer move much; before, they are a first guess. Common practice. */
export const SETTLED = 20;

const SIGMAS = 3;
const EDGE = 1e-9;

/**
 * Chart of the share of bad pieces with limits for each point's own number of pieces.
 *
 * center p = all bad / all poured; limits p -+ 3 sqrt(p (1 - p) / n). Run rules use (share - p) / sqrt(p (1 - p) / n).
 * The limits take luck as binomial: pieces of one run that fail together make it look worse than it is.
 * @param samples - one per run in the order they were made; poured whole, >= 1; bad whole, 0 to poured
 * @param leaveOut - points, counted from 0, that the limits are worked out without: those whose cause was found and mended
 * @throws InputError on a figure out of range
 * @source NISTHANDBOOK, section 6.3.3.2
 */
export function pChart(samples: readonly Sample[], leaveOut: readonly number[] = []): PChartResult {
  for (const { poured, bad } of samples) {
    requireNumber(poured, 'poured', { atLeast: 1, whole: true });
    requireNumber(bad, 'bad', { atLeast: 0, atMost: poured, whole: true });
  }
  const out = new Set(leaveOut);
  const base = samples.filter((_, index) => !out.has(index));
  if (base.length < 2) return { kind: 'no chart', because: 'fewer than two points' };
  const center = sum(base, 'bad') / sum(base, 'poured');
  const points = samples.map((sample) => pointOf(sample, center));
  const signals = runSignals(samples.map((sample) => rulePoint(sample, center)));
  return { kind: 'chart', center, points, signals, base: base.length };
}

function sum(samples: readonly Sample[], key: keyof Sample): number {
  return samples.reduce((total, sample) => total + sample[key], 0);
}

function pointOf(sample: Sample, center: number): SharePoint {
  const half = SIGMAS * Math.sqrt((center * (1 - center)) / sample.poured);
  return {
    ...sample,
    share: sample.bad / sample.poured,
    lower: Math.max(0, center - half),
    upper: Math.min(1, center + half),
  };
}

function rulePoint({ poured, bad }: Sample, center: number): RulePoint {
  const expected = poured * center;
  const deviation = Math.sqrt(poured * center * (1 - center));
  const atLeast = (count: number) => chanceOfBad(count, poured, center);
  return {
    // Where nothing or everything is bad there is no luck to measure by.
    z: deviation === 0 ? 0 : (bad - expected) / deviation,
    chanceBeyond: (sigmas, side) =>
      side === 'high'
        ? atLeast(Math.floor(expected + sigmas * deviation + EDGE) + 1)
        : Math.max(0, 1 - atLeast(Math.ceil(expected - sigmas * deviation - EDGE))),
    get chanceAsFar() {
      return bad > expected ? atLeast(bad) : Math.max(0, 1 - atLeast(bad + 1));
    },
  };
}

/** Binomial chance of so many bad pieces or more. */
function chanceOfBad(count: number, poured: number, share: number): number {
  if (count > poured) return 0;
  return chanceOfEnough(Math.max(0, count), poured, { kind: 'fixed', yield: share });
}
