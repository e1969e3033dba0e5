import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import { sayCount } from '../../words/say.ts';
import { sayValue } from './controlLegend.ts';

/** The control chart in words, from the same numbers. */
export function controlChartWords(chart: ControlChart): string {
  const { title, points, center, signals, each, isProvisional, ranges } = chart;
  const values = points.map(({ value }) => value);
  const span = `from ${sayValue(Math.min(...values), chart)} to ${sayValue(Math.max(...values), chart)}`;
  return [
    `${title}: ${sayCount(points.length, each)}, ${span}, center line ${sayValue(center, chart)}.`,
    `${limitWords(chart)}.`,
    ...(ranges === undefined
      ? []
      : [
          `Neighbors differ by ${sayValue(ranges.mean, chart)} on average, limit ${sayValue(ranges.limit, chart)}.`,
        ]),
    signals.length === 0
      ? 'No signal.'
      : `${sayCount(signals.length, 'signal')}: ${signals.map(({ text }) => text).join('; ')}.`,
    ...(isProvisional
      ? [
          `From ${sayCount(points.length, each)} the limits are a first guess: they settle after about 20.`,
        ]
      : []),
  ].join(' ');
}

function limitWords(chart: ControlChart): string {
  const ends = (['lower', 'upper'] as const).map((of) => {
    const values = chart.points.map((point) => point[of]);
    const [least, most] = [Math.min(...values), Math.max(...values)].map((one) =>
      sayValue(one, chart),
    );
    return least === most ? `${least}` : `${least} to ${most}`;
  });
  return `Lower limit ${ends[0]}, upper limit ${ends[1]}`;
}
