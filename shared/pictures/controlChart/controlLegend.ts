import { GRAY, segment } from '../../elements/shape.ts';
import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import { quantityText, shareText } from '../../words/quantityText.ts';
import type { LegendItem } from '../chart/legend.ts';
import { signalMark } from './signalLanes.ts';

/** A value of the chart in words: `12 %`, `0.315 oz`. */
export function chartValueText(value: number, { kind, system }: ControlChart): string {
  if (kind === 'share-chart') return shareText(Number(value.toPrecision(3)));
  return quantityText(value, 'baseMass', system, system === 'US' ? 3 : 2);
}

export function controlLegend(chart: ControlChart): readonly LegendItem[] {
  const { center, each, kind, signals } = chart;
  const limits = kind === 'share-chart' ? `limits for the pieces of each ${each}` : 'limits';
  return [
    {
      draw: (x, y) => [segment([x, y], [x + 24, y], { stroke: GRAY.text })],
      text: `center line ${chartValueText(center, chart)}`,
    },
    {
      draw: (x, y) => [
        segment([x, y], [x + 24, y], {
          stroke: GRAY.text,
          'stroke-dasharray': '6 3',
          'stroke-width': 1.2,
        }),
      ],
      text: limits,
    },
    ...(signals.length === 0
      ? []
      : [{ draw: (x: number, y: number) => [signalMark([x + 12, y])], text: 'signal' }]),
  ];
}
