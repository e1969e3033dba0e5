import { type PChart, type PChartResult, pChart, SETTLED } from '../../quality/charts/pChart.ts';
import type { UnitSystem } from '../../units/measures.ts';
import type { ChartPoints, NamedSample } from './chartSamples.ts';
import type { ControlChart } from './controlChart.ts';
import { ruleName, signalText } from './signalText.ts';

/** What a signal of a chart of bad pieces means. */
export const SHARE_MEANING = { high: 'more bad than usual', low: 'fewer bad than usual' } as const;

/** Points on a chart: more would not be told apart on a panel, and limits from long ago say little of today. */
export const MOST_POINTS = 60;

/** The chart of bad pieces as a picture shows it: the newest points, limits from the same ones. */
export function shareChart(
  all: readonly NamedSample[],
  { title, system, points: each }: { title: string; system: UnitSystem; points: ChartPoints },
): ControlChart | undefined {
  const samples = all.slice(-MOST_POINTS);
  const chart = pChart(samples);
  if (chart.kind === 'no chart') return undefined;
  const labels = samples.map(({ label }) => label);
  return {
    kind: 'share-chart',
    title,
    system,
    each: each === 'runs' ? 'run' : 'round',
    center: chart.center,
    points: chart.points.map(({ share, lower, upper }, index) => ({
      label: labels[index] ?? '',
      value: share,
      lower,
      upper,
    })),
    signals: chart.signals.map((signal) => ({
      rule: ruleName(signal),
      text: signalText(signal, labels, SHARE_MEANING),
      from: signal.from,
      to: signal.to,
    })),
    isProvisional: chart.base < SETTLED,
  };
}

/** Points beyond a limit, the first candidates for a cause that was found. */
function beyondLimit({ signals }: PChart): readonly number[] {
  return signals.filter(({ rule }) => rule === 'limit').map(({ from }) => from);
}

/** The chart with limits worked out once more without the points beyond the first ones. */
export function recomputed(samples: readonly NamedSample[]): PChartResult {
  const first = pChart(samples);
  return first.kind === 'chart' ? pChart(samples, beyondLimit(first)) : first;
}
