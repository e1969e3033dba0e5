import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, segment, shape } from '../../elements/shape.ts';
import type { YieldAgainstTop } from '../../outcomes/quality/yieldPicture.ts';
import { MEASURES } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { shareText, temperatureText } from '../../words/quantityText.ts';
import { eventLines } from '../chart/eventLines.ts';
import type { LegendItem } from '../chart/legend.ts';
import type { Scale } from '../chart/linearScale.ts';
import { bandPath, linePath } from '../chart/linePath.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import { type Edges, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';

/** Radius of a round of few and of many pieces [px]. */
const SMALLEST = 2.5;
const LARGEST = 8;

type Curve = YieldAgainstTop['curve'];

/** Rounds as circles by their pieces, the fitted curve and its band, and where water boils. */
export function yieldCurvePicture(picture: YieldAgainstTop, size: PictureSize): PlainElement {
  const { curve, rounds, boilingPoint, system } = picture;
  const boils = {
    x: boilingPoint,
    text: `water boils at ${temperatureText(boilingPoint, system)}`,
  };
  const { edges, key, room } = plotLayout(
    { legend: legendItems(), labels: [], events: [boils] },
    size,
  );
  const { x, y, drawn } = axesOf(picture, { ...edges, right: size.width - 16 });
  return pictureRoot(picture, size, [
    ...key,
    ...drawn,
    ...bandAndCurve(curve, { x, y }),
    ...eventLines([{ ...boils, x: x(boils.x) }], edges, room),
    ...rounds.map(({ moldTop, poured, good }) =>
      shape('circle', {
        cx: x(moldTop),
        cy: y(good / poured),
        r: radius(poured, rounds),
        fill: 'none',
        stroke: GRAY.text,
        'stroke-width': 1.2,
      }),
    ),
  ]);
}

/** Area by pieces. */
function radius(poured: number, rounds: YieldAgainstTop['rounds']): number {
  const most = Math.max(...rounds.map((round) => round.poured));
  return Math.max(SMALLEST, LARGEST * Math.sqrt(poured / most));
}

function axesOf({ curve, rounds, boilingPoint, system }: YieldAgainstTop, edges: Edges) {
  const unit = MEASURES.temperature[system];
  const { left, right } = edges;
  const tops = [...curve, ...rounds].map(({ moldTop }) => moldTop);
  const frame = plotFrame(
    edges,
    niceAxis(
      [...tops, boilingPoint].map((one) => fromEngine(one, unit)),
      {
        title: `mold top at the first pour, ${UNITS[unit].label}`,
        room: right - left,
        along: 'across',
        narrowest: 10,
      },
    ),
    { domain: [0, 100], ticks: [0, 20, 40, 60, 80, 100], tickText: String, title: '% good' },
  );
  return {
    x: (temperature: number) => frame.x(fromEngine(temperature, unit)),
    y: (share: number) => frame.y(share * 100),
    drawn: frame.drawn,
  };
}

function bandAndCurve(curve: Curve, { x, y }: { x: Scale; y: Scale }): readonly PlainElement[] {
  const lineOf = (of: 'low' | 'high' | 'rate') =>
    curve.map((one) => [x(one.moldTop), y(one[of])] as const);
  const band = bandPath(lineOf('high'), lineOf('low'));
  const middle = linePath(lineOf('rate'));
  if (band === undefined || middle === undefined) return [];
  return [
    shape('path', { d: band, fill: GRAY.band }),
    shape('path', { d: middle, fill: 'none', stroke: GRAY.text, 'stroke-width': 2.4 }),
  ];
}

function legendItems(): readonly LegendItem[] {
  return [
    {
      draw: (x, y) => [
        shape('circle', {
          cx: x + 12,
          cy: y,
          r: 5,
          fill: 'none',
          stroke: GRAY.text,
          'stroke-width': 1.2,
        }),
      ],
      text: 'a round, larger with more pieces',
    },
    {
      draw: (x, y) => [segment([x, y], [x + 24, y], { stroke: GRAY.text, 'stroke-width': 2.4 })],
      text: 'fitted curve',
    },
    {
      draw: (x, y) => [shape('rect', { x, y: y - 6, width: 24, height: 12, fill: GRAY.band })],
      text: `${shareText(0.95)} band`,
    },
  ];
}
