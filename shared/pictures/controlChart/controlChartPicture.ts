import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, type Point, segment, shape, textShape } from '../../elements/shape.ts';
import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import { legend } from '../chart/legend.ts';
import { linearScale, type Scale } from '../chart/linearScale.ts';
import { lineShape } from '../chart/lineShape.ts';
import { pictureRoot } from '../chart/pictureRoot.ts';
import { type Axis, type Edges, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import { type ChartUnit, chartUnit } from './chartUnit.ts';
import { controlChartText } from './controlChartText.ts';
import { controlLegend, LIMIT } from './controlLegend.ts';
import { rangeStrip, STRIP } from './rangeStrip.ts';
import { drawLanes, signalLanes, signalList, signalMark } from './signalLanes.ts';

const LEFT = 50;
const RIGHT = 10;
const TITLE = 26;
const PLOT = 190;
const BELOW = 26;

/** Points with their limits; what breaks a rule is ringed, numbered, and named below. */
export function controlChartPicture(chart: ControlChart, width: number): PlainElement {
  const unit = chartUnit(chart);
  const { points, ranges, signals } = chart;
  const across = linearScale([-0.5, points.length - 0.5], [LEFT, width - RIGHT]);
  const lanes = signalLanes(signals, across);
  const key = legend(controlLegend(chart), { left: 8, top: 4, width: width - 16 });
  const top = key.height + TITLE + lanes.height;
  const edges: Edges = { left: LEFT, right: width - RIGHT, top, bottom: top + PLOT };
  const { y, drawn } = frameOf(chart, unit, edges);
  const at = (index: number): Point => [across(index), y(points[index]?.value ?? 0)];
  const strip = ranges === undefined ? 0 : STRIP;
  const list = signalList(
    lanes,
    points.map(({ label }) => label),
    { left: 8, top: edges.bottom + BELOW + strip, width: width - 16 },
  );
  const ringed = new Set(lanes.signals.map(({ to }) => to));
  const texts = { ...chart, text: controlChartText(chart) };
  return pictureRoot(texts, { width, height: edges.bottom + BELOW + strip + list.height + 6 }, [
    ...key.drawn,
    textShape(4, key.height + 16, unit.title, { size: FONT.small }),
    ...drawn,
    textShape(
      (edges.left + edges.right) / 2,
      edges.bottom + 16,
      `${chart.each}s, the newest at the right`,
      {
        size: FONT.small,
        anchor: 'middle',
      },
    ),
    ...limitLines(chart, { x: across, y, edges }),
    ...lineShape(
      points.map((_, index) => at(index)),
      { stroke: GRAY.hatch, 'stroke-width': 1 },
    ),
    ...drawLanes(lanes, { top: edges.top, at }),
    ...points.map((_, index) => (ringed.has(index) ? signalMark(at(index)) : dot(at(index)))),
    ...(ranges === undefined
      ? []
      : rangeStrip(ranges, unit, across, { ...edges, top: edges.bottom + BELOW })),
    ...list.drawn,
  ]);
}

function frameOf(chart: ControlChart, unit: ChartUnit, edges: Edges) {
  const { points } = chart;
  const shown = points.flatMap(({ value, lower, upper }) => [value, lower, upper]);
  const up = niceAxis(shown, {
    of: unit.of,
    title: '',
    room: edges.bottom - edges.top,
    along: 'down',
    narrowest: unit.narrowest,
  });
  return plotFrame(edges, pointsAxis(points.length), up);
}

/** No ticks: places are told by the order and by the names below. */
function pointsAxis(count: number): Axis {
  return { domain: [-0.5, count - 0.5], ticks: [], tickText: String, title: '' };
}

/** The center line, and for each point the limits of its own number of pieces. */
function limitLines(
  { points, center }: ControlChart,
  { x, y, edges }: { x: Scale; y: Scale; edges: Edges },
): readonly PlainElement[] {
  const level = y(center);
  const steps = (of: 'lower' | 'upper') =>
    points.flatMap((point, index): readonly Point[] => {
      const height = y(point[of]);
      return [
        [x(index - 0.5), height],
        [x(index + 0.5), height],
      ];
    });
  return [
    segment([edges.left, level], [edges.right, level], { stroke: GRAY.text }),
    ...lineShape(steps('upper'), LIMIT),
    ...lineShape(steps('lower'), LIMIT),
  ];
}

function dot([cx, cy]: Point): PlainElement {
  return shape('circle', { cx, cy, r: 2.4, fill: GRAY.text });
}
