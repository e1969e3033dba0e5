import { type PChart, pChart } from '../../quality/charts/pChart.ts';
import type { ChartPoints, NamedSample } from './chartSamples.ts';
import { recomputed, SHARE_MEANING } from './shareChart.ts';
import { signalText } from './signalText.ts';

/** Which points the limits come from. */
export const CHART_LIMITS = ['all points', 'without points beyond a limit'] as const;
export type ChartLimits = (typeof CHART_LIMITS)[number];

const CHART_HEADINGS = [
  'Point',
  'Poured',
  'Bad',
  'Share bad',
  'Center',
  'Lower',
  'Upper',
  'Signal',
] as const;

type Cells = readonly (string | number)[];

/** Rows of a chart of bad pieces for a sheet, headings first; one row in words where there is no chart. */
export function chartCells(
  samples: readonly NamedSample[],
  { limits, points }: { limits: ChartLimits; points: ChartPoints },
): readonly Cells[] {
  const chart = limits === 'all points' ? pChart(samples) : recomputed(samples);
  if (chart.kind === 'no chart')
    return [CHART_HEADINGS, [`needs two ${points}`, '', '', '', '', '', '', '']];
  const signals = signalsByPoint(chart, samples);
  return [
    CHART_HEADINGS,
    ...chart.points.map(({ poured, bad, share, lower, upper }, index) => [
      samples[index]?.label ?? '',
      poured,
      bad,
      share,
      chart.center,
      lower,
      upper,
      signals.get(index) ?? '',
    ]),
  ];
}

/** Each signal stands beside its last point. */
function signalsByPoint(
  { signals }: PChart,
  samples: readonly NamedSample[],
): ReadonlyMap<number, string> {
  const labels = samples.map(({ label }) => label);
  const words = new Map<number, string>();
  for (const signal of signals) {
    const text = signalText(signal, labels, SHARE_MEANING);
    const before = words.get(signal.to);
    words.set(signal.to, before === undefined ? text : `${before}; ${text}`);
  }
  return words;
}
