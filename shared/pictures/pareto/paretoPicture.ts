import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, type Point, segment, shape, textShape } from '../../elements/shape.ts';
import type { DefectPareto } from '../../outcomes/quality/defectPareto.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import { fitText } from '../chart/fitText.ts';
import { type LegendItem, legend } from '../chart/legend.ts';
import { linearScale } from '../chart/linearScale.ts';
import { lineShape } from '../chart/lineShape.ts';
import { pictureRoot } from '../chart/pictureRoot.ts';
import { paretoText } from './paretoText.ts';

/** Room of the names and of the counts behind them [px]. */
const NAME = 124;
const COUNT = 30;
const ROW = 26;
const BAR = 16;
const RIGHT = 34;
const BELOW = 40;
const TICKS = [0, 25, 50, 75, 100];

/** Bars by what was wrong, the most first, and a line of what they sum up to. */
export function paretoPicture(pareto: DefectPareto, width: number): PlainElement {
  const { bars } = pareto;
  const key = legend(legendItems(), { left: 8, top: 4, width: width - 16 });
  const top = key.height + 8;
  const bottom = top + Math.max(1, bars.length) * ROW;
  const x = linearScale([0, 1], [NAME, width - RIGHT]);
  const middle = (index: number) => top + (index + 0.5) * ROW;
  const sums = bars.map(({ cumulated }, index): Point => [x(cumulated), middle(index)]);
  const texts = { ...pareto, text: paretoText(pareto) };
  return pictureRoot(texts, { width, height: bottom + BELOW }, [
    ...key.drawn,
    ...TICKS.flatMap((tick) => [
      segment([x(tick / 100), top], [x(tick / 100), bottom], { stroke: GRAY.grid }),
      textShape(x(tick / 100), bottom + 15, String(tick), { size: FONT.small, anchor: 'middle' }),
    ]),
    segment([NAME, bottom], [width - RIGHT, bottom]),
    textShape((NAME + width - RIGHT) / 2, bottom + 32, '% of the bad pieces', {
      size: FONT.small,
      anchor: 'middle',
    }),
    ...bars.map(({ share }, index) =>
      shape('rect', {
        x: NAME,
        y: middle(index) - BAR / 2,
        width: x(share) - NAME,
        height: BAR,
        fill: GRAY.band,
        stroke: GRAY.text,
        'stroke-width': 1,
      }),
    ),
    ...sumLine(sums),
    ...bars.flatMap(({ name, count }, index) => [
      textShape(NAME - COUNT - 6, middle(index) + 4, fitText(name, NAME - COUNT - 10, FONT.small), {
        size: FONT.small,
        anchor: 'end',
      }),
      textShape(NAME - 6, middle(index) + 4, formatPlain(count), {
        size: FONT.small,
        anchor: 'end',
        isBold: true,
      }),
    ]),
    segment([NAME, top], [NAME, bottom]),
  ]);
}

function sumLine(points: readonly Point[]): readonly PlainElement[] {
  const marks = points.map(sumMark);
  return points.length < 2 ? marks : [...lineShape(points, { 'stroke-width': 1.4 }), ...marks];
}

function sumMark([cx, cy]: Point): PlainElement {
  return shape('circle', { cx, cy, r: 3.5, fill: '#fff', stroke: GRAY.text, 'stroke-width': 1.5 });
}

function legendItems(): readonly LegendItem[] {
  return [
    {
      draw: (x, y) => [
        shape('rect', {
          x: x + 2,
          y: y - 5,
          width: 20,
          height: 10,
          fill: GRAY.band,
          stroke: GRAY.text,
          'stroke-width': 1,
        }),
      ],
      text: 'pieces',
    },
    {
      draw: (x, y) => [
        segment([x, y], [x + 24, y], { stroke: GRAY.text, 'stroke-width': 1.4 }),
        sumMark([x + 12, y]),
      ],
      text: 'summed from the top',
    },
  ];
}
