import { nameKey } from '../../book/bookIndex.ts';
import type { Sample } from '../../quality/charts/pChart.ts';
import type { LoggedRound } from './loggedRounds.ts';

/** What one point of a chart is. */
export const CHART_POINTS = ['rounds', 'runs'] as const;
export type ChartPoints = (typeof CHART_POINTS)[number];

export interface NamedSample extends Sample {
  readonly label: string;
}

/** Poured and bad pieces of each round, or of each run with all its rounds, in the order of the log. */
export function chartSamples(
  rounds: readonly LoggedRound[],
  points: ChartPoints,
): readonly NamedSample[] {
  const samples = new Map<string, NamedSample>();
  for (const { row, run, label, poured, good } of rounds) {
    const key = points === 'runs' ? nameKey(run) : String(row);
    const sample = samples.get(key) ?? {
      label: points === 'runs' ? run : label,
      poured: 0,
      bad: 0,
    };
    samples.set(key, {
      ...sample,
      poured: sample.poured + poured,
      bad: sample.bad + poured - good,
    });
  }
  return [...samples.values()];
}
