import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, shape } from '../../elements/shape.ts';
import type { YieldAgainstTop } from '../../outcomes/quality/yieldPicture.ts';
import { MEASURES } from '../../units/measures.ts';
import { UNITS } from '../../units/units.ts';
import { shareText, temperatureText } from '../../words/quantityText.ts';
import { eventLines } from '../chart/eventLines.ts';
import { bandSwatch, type LegendItem, lineSwatch } from '../chart/legend.ts';
import { bandShape, lineShape } from '../chart/lineShape.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import {
  type Axis,
  type Edges,
  inUnit,
  niceAxis,
  type PlotFrame,
  plotFrame,
} from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';
import { yieldCurveText } from './yieldCurveText.ts';

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
  const frame = frameOf(picture, { ...edges, right: size.width - 16 });
  const texts = { ...picture, text: yieldCurveText(picture) };
  return pictureRoot(texts, size, [
    ...key,
    ...frame.drawn,
    ...curveShapes(curve, frame),
    ...eventLines([boils], frame, room),
    ...rounds.map(({ moldTop, poured, good }) =>
      shape('circle', {
        cx: frame.x(moldTop),
        cy: frame.y(good / poured),
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

function frameOf(
  { curve, rounds, boilingPoint, system }: YieldAgainstTop,
  edges: Edges,
): PlotFrame {
  const unit = MEASURES.temperature[system];
  const tops = [...curve, ...rounds].map(({ moldTop }) => moldTop);
  const across = niceAxis([...tops, boilingPoint], {
    of: inUnit(unit),
    title: `mold top at the first pour, ${UNITS[unit].label}`,
    room: edges.right - edges.left,
    along: 'across',
    narrowest: 10,
  });
  return plotFrame(edges, across, GOOD_SHARES);
}

const GOOD_SHARES: Axis = {
  of: (share) => share * 100,
  domain: [0, 100],
  ticks: [0, 20, 40, 60, 80, 100],
  tickText: String,
  title: '% good',
};

function curveShapes(curve: Curve, { x, y }: PlotFrame): readonly PlainElement[] {
  const pointsOf = (of: 'low' | 'high' | 'rate') =>
    curve.map((one) => [x(one.moldTop), y(one[of])] as const);
  return [
    ...bandShape(pointsOf('high'), pointsOf('low')),
    ...lineShape(pointsOf('rate'), { 'stroke-width': 2.4 }),
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
      draw: lineSwatch({ stroke: GRAY.text, 'stroke-width': 2.4 }),
      text: 'fitted curve',
    },
    {
      draw: bandSwatch({ fill: GRAY.band }),
      text: `${shareText(0.95)} band`,
    },
  ];
}
