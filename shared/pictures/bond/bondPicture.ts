import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, type Point, segment, shape, textShape } from '../../elements/shape.ts';
import { passChance } from '../../quality/logistic/logisticLogLikelihood.ts';
import type { BondPictured } from '../../trials/trialPictureTypes.ts';
import { formatFixed } from '../../units/formatPlain.ts';
import { MEASURES } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { temperatureText } from '../../words/quantityText.ts';
import type { LegendItem } from '../chart/legend.ts';
import { linePath } from '../chart/linePath.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import { type Axis, type Edges, niceAxis, type PlotFrame, plotFrame } from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';
import { pointMark } from '../chart/pointMark.ts';

/** Form and height of a joint's mark: a bond stands at the top, a clean peel at the bottom. */
const MARKS = {
  'tears through': { form: 0, share: 1 },
  'tears in part': { form: 3, share: 0.5 },
  'peels clean': { form: 4, share: 0 },
} as const;

/** Marks nearer than this across are stacked, each so far from the one before [px]. */
const NEAR = 9;
const STEP = 10;
/** Stacks as high at most; further marks lie on the last. */
const HIGHEST = 5;
/** Points of the curve. */
const STEPS = 80;

/** Torn joints by contact temperature, with the fitted chance to bond and the limits of the threshold. */
export function bondPicture(bond: BondPictured, size: PictureSize): PlainElement {
  const { edges, key } = plotLayout({ legend: legendOf(bond), labels: [], events: [] }, size);
  const frame = plotFrame(edges, temperatureAxis(bond, edges), SHARES);
  const unit = MEASURES.temperature[bond.system];
  const x = (temperature: number) => frame.x(fromEngine(temperature, unit));
  return pictureRoot(bond, size, [
    ...key,
    ...bandOf(bond, x, edges),
    ...frame.drawn,
    ...curveOf(bond, frame, edges),
    ...linesOf(bond, x, edges),
    ...jointMarks(bond, (joint) => [x(joint.contactTemperature), frame.y(MARKS[joint.tear].share)]),
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
  ].map((value) => fromEngine(value, unit));
  return niceAxis(shown, {
    title: `contact temperature, ${UNITS[unit].label}`,
    room: edges.right - edges.left,
    along: 'across',
    narrowest: 10,
  });
}

function bandOf(
  { threshold }: BondPictured,
  x: (value: number) => number,
  { top, bottom }: Edges,
): readonly PlainElement[] {
  if (threshold === undefined) return [];
  const [left, right] = [x(threshold.low), x(threshold.high)];
  const place = { x: left, y: top, width: right - left, height: bottom - top };
  return [shape('rect', { ...place, fill: GRAY.band })];
}

function curveOf(
  { curve, system }: BondPictured,
  frame: PlotFrame,
  { left, right }: Edges,
): readonly PlainElement[] {
  if (curve === undefined) return [];
  const unit = MEASURES.temperature[system];
  const [low, high] = [-1, 1].map(
    (side) => -curve.intercept / curve.slope + (side * 12) / curve.slope,
  );
  const points = Array.from({ length: STEPS + 1 }, (_, step): Point => {
    const at = (low ?? 0) + (((high ?? 0) - (low ?? 0)) * step) / STEPS;
    const place = frame.x(fromEngine(at, unit));
    return [place, frame.y(passChance(curve.intercept, curve.slope, at))];
  });
  const inside = points.filter(([place]) => place >= left && place <= right);
  const d = linePath(inside);
  return d === undefined
    ? []
    : [shape('path', { d, fill: 'none', stroke: GRAY.text, 'stroke-width': 2.4 })];
}

/** The threshold and the figure in use, each named at its line. */
function linesOf(
  { threshold, inUse, system }: BondPictured,
  x: (value: number) => number,
  { top, bottom, left, right }: Edges,
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

function jointMarks(
  { joints }: BondPictured,
  at: (joint: BondPictured['joints'][number]) => Point,
): readonly PlainElement[] {
  const placed: { readonly x: number; readonly share: number; readonly level: number }[] = [];
  return [...joints]
    .sort((one, other) => one.contactTemperature - other.contactTemperature)
    .map((joint) => {
      const { form, share } = MARKS[joint.tear];
      const [x, y] = at(joint);
      const near = placed.filter((one) => one.share === share && x - one.x < NEAR);
      const level = Math.min(
        HIGHEST,
        near.length === 0 ? 0 : firstFree(near.map((one) => one.level)),
      );
      placed.push({ x, share, level });
      return pointMark([x, y + level * STEP * (share === 0 ? 1 : -1)], form);
    });
}

function firstFree(levels: readonly number[]): number {
  let level = 0;
  while (levels.includes(level)) level += 1;
  return level;
}

function legendOf({ joints, threshold }: BondPictured): readonly LegendItem[] {
  const marks = (Object.keys(MARKS) as (keyof typeof MARKS)[]) // keys of the table above
    .filter((tear) => joints.some((joint) => joint.tear === tear))
    .map(
      (tear): LegendItem => ({
        draw: (x, y) => [pointMark([x + 12, y], MARKS[tear].form)],
        text: tear,
      }),
    );
  if (threshold === undefined) return marks;
  const box = { width: 24, height: 12, fill: GRAY.band, stroke: GRAY.hatch };
  return [
    ...marks,
    {
      draw: (x, y) => [shape('rect', { x, y: y - 6, ...box })],
      text: 'half bond in here, nine times out of ten',
    },
  ];
}
