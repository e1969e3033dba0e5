import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, type Point, segment, shape, textShape } from '../../elements/shape.ts';
import { passChance } from '../../quality/logistic/logisticLogLikelihood.ts';
import type { BondPictured } from '../../trials/trialPictureTypes.ts';
import { formatFixed } from '../../units/formatPlain.ts';
import { MEASURES } from '../../units/measures.ts';
import { UNITS } from '../../units/units.ts';
import { temperatureText } from '../../words/quantityText.ts';
import { bandSwatch, type LegendItem } from '../chart/legend.ts';
import { lineShape } from '../chart/lineShape.ts';
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
import { bondPictureText } from './bondPictureText.ts';
import { jointLegend, jointMarks } from './jointMarks.ts';

/** Points of the curve. */
const STEPS = 80;

/** Torn joints by contact temperature, with the fitted chance to bond and the limits of the threshold. */
export function bondPicture(bond: BondPictured, size: PictureSize): PlainElement {
  const { edges, key } = plotLayout({ legend: legendOf(bond), labels: [], events: [] }, size);
  const frame = plotFrame(edges, temperatureAxis(bond, edges), SHARES);
  const texts = { ...bond, text: bondPictureText(bond) };
  return pictureRoot(texts, size, [
    ...key,
    ...thresholdBand(bond, frame),
    ...frame.drawn,
    ...curveShapes(bond, frame),
    ...namedLines(bond, frame),
    ...jointMarks(bond, frame),
  ]);
}

/** Room above and below for the stacks. */
const SHARES: Axis = {
  domain: [-0.3, 1.3],
  ticks: [0, 0.25, 0.5, 0.75, 1],
  tickText: (tick) => formatFixed(tick * 100, 0),
  title: 'chance to bond, %',
};

function temperatureAxis({ joints, inUse, threshold, system }: BondPictured, edges: Edges): Axis {
  const unit = MEASURES.temperature[system];
  const shown = [
    ...joints.map((joint) => joint.contactTemperature),
    inUse,
    ...(threshold ? [threshold.low, threshold.high] : []),
  ];
  return niceAxis(shown, {
    of: inUnit(unit),
    title: `contact temperature, ${UNITS[unit].label}`,
    room: edges.right - edges.left,
    along: 'across',
    narrowest: 10,
  });
}

function thresholdBand(
  { threshold }: BondPictured,
  { x, edges: { top, bottom } }: PlotFrame,
): readonly PlainElement[] {
  if (threshold === undefined) return [];
  const [left, right] = [x(threshold.low), x(threshold.high)];
  const place = { x: left, y: top, width: right - left, height: bottom - top };
  return [shape('rect', { ...place, fill: GRAY.band })];
}

function curveShapes(
  { curve }: BondPictured,
  { x, y, edges: { left, right } }: PlotFrame,
): readonly PlainElement[] {
  if (curve === undefined) return [];
  const [low = 0, high = 0] = [-1, 1].map(
    (side) => -curve.intercept / curve.slope + (side * 12) / curve.slope,
  );
  const points = Array.from({ length: STEPS + 1 }, (_, step): Point => {
    const at = low + ((high - low) * step) / STEPS;
    return [x(at), y(passChance(curve.intercept, curve.slope, at))];
  });
  const inside = points.filter(([place]) => place >= left && place <= right);
  return lineShape(inside, { 'stroke-width': 2.4 });
}

/** The threshold and the figure in use, each named at its line. */
function namedLines(
  { threshold, inUse, system }: BondPictured,
  { x, edges: { top, bottom, left, right } }: PlotFrame,
): readonly PlainElement[] {
  const named = (value: number, text: string, y: number, dash: string): readonly PlainElement[] => {
    const at = x(value);
    const isLeft = at - left > (right - left) / 2;
    return [
      segment([at, top], [at, bottom], {
        stroke: GRAY.text,
        'stroke-width': 1.6,
        ...(dash === '' ? {} : { 'stroke-dasharray': dash }),
      }),
      textShape(at + (isLeft ? -5 : 5), y, `${text} ${temperatureText(value, system)}`, {
        anchor: isLeft ? 'end' : 'start',
        isBold: dash === '',
      }),
    ];
  };
  return [
    ...named(inUse, 'in use', bottom - 6, '5 4'),
    ...(threshold ? named(threshold.value, 'half bond at', top + 14, '') : []),
  ];
}

function legendOf(bond: BondPictured): readonly LegendItem[] {
  const marks = jointLegend(bond);
  if (bond.threshold === undefined) return marks;
  const band: LegendItem = {
    draw: bandSwatch({ fill: GRAY.band, stroke: GRAY.hatch }),
    text: 'half bond in here, nine times out of ten',
  };
  return [...marks, band];
}
