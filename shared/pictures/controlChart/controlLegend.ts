import { GRAY } from '../../elements/shape.ts';
import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import { type LegendItem, lineSwatch } from '../chart/legend.ts';
import { chartValueText } from './controlChartText.ts';
import { signalMark } from './signalLanes.ts';

/** How a limit is drawn. */
export const LIMIT = { stroke: GRAY.text, 'stroke-dasharray': '6 3', 'stroke-width': 1.2 };

/** What the lines and the rings mean. */
export function controlLegend(chart: ControlChart): readonly LegendItem[] {
  const { center, each, kind, signals } = chart;
  const limits = kind === 'share-chart' ? `limits for the pieces of each ${each}` : 'limits';
  return [
    {
      draw: lineSwatch({ stroke: GRAY.text }),
      text: `center line ${chartValueText(center, chart)}`,
    },
    {
      draw: lineSwatch(LIMIT),
      text: limits,
    },
    ...(signals.length === 0
      ? []
      : [{ draw: (x: number, y: number) => [signalMark([x + 12, y])], text: 'signal' }]),
  ];
}
