import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import { countText, quantityText, shareText } from '../../words/quantityText.ts';

/** A value of the chart in words: `12 %`, `0.315 oz`. */
export function chartValueText(value: number, { kind, system }: ControlChart): string {
  if (kind === 'share-chart') return shareText(Number(value.toPrecision(3)));
  return quantityText(value, 'baseMass', system, system === 'US' ? 3 : 2);
}

/** The control chart in words, from the same numbers. */
export function controlChartText(chart: ControlChart): string {
  const { title, points, center, signals, each, isProvisional, ranges } = chart;
  const values = points.map(({ value }) => value);
  const span = `from ${chartValueText(Math.min(...values), chart)} to ${chartValueText(Math.max(...values), chart)}`;
  return [
    `${title}: ${countText(points.length, each)}, ${span}, center line ${chartValueText(center, chart)}.`,
    `${limitText(chart)}.`,
    ...(ranges === undefined
      ? []
      : [
          `Neighbors differ by ${chartValueText(ranges.mean, chart)} on average, limit ${chartValueText(ranges.limit, chart)}.`,
        ]),
    signals.length === 0
      ? 'No signal.'
      : `${countText(signals.length, 'signal')}: ${signals.map(({ text }) => text).join('; ')}.`,
    ...(isProvisional
      ? [
          `From ${countText(points.length, each)} the limits are a first guess: they settle after about 20.`,
        ]
      : []),
  ].join(' ');
}

function limitText(chart: ControlChart): string {
  const ends = (['lower', 'upper'] as const).map((of) => {
    const values = chart.points.map((point) => point[of]);
    const [least, most] = [Math.min(...values), Math.max(...values)].map((one) =>
      chartValueText(one, chart),
    );
    return least === most ? `${least}` : `${least} to ${most}`;
  });
  return `Lower limit ${ends[0]}, upper limit ${ends[1]}`;
}
