import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, segment, shape, textShape } from '../../elements/shape.ts';
import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import type { Scale } from '../chart/linearScale.ts';
import { type Edges, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import type { ChartUnit } from './chartUnit.ts';

/** Height of the strip of ranges with its axis [px]. */
export const STRIP = 126;
const PLOT = 80;
const TITLE = 14;

/** How far each piece is from the one before: stems, the mean, and the limit that a jump passes. */
export function rangeStrip(
  { values, mean, limit }: NonNullable<ControlChart['ranges']>,
  unit: ChartUnit,
  x: Scale,
  { left, right, top }: Edges,
): readonly PlainElement[] {
  const edges = { left, right, top: top + TITLE, bottom: top + TITLE + PLOT };
  const up = niceAxis([0, ...[...values, limit].map(unit.of)], {
    title: '',
    room: PLOT,
    along: 'down',
    narrowest: unit.narrowest,
  });
  const across = { domain: [0, 1] as const, ticks: [], tickText: String, title: '' };
  const { y, drawn } = plotFrame(edges, across, up);
  const level = (value: number) => y(unit.of(value));
  return [
    ...drawn,
    segment([left, level(mean)], [right, level(mean)], { stroke: GRAY.text }),
    segment([left, level(limit)], [right, level(limit)], {
      stroke: GRAY.text,
      'stroke-dasharray': '6 3',
      'stroke-width': 1.2,
    }),
    ...values.flatMap((value, index) => {
      const [cx, cy] = [x(index + 1), level(value)];
      return [
        segment([cx, level(0)], [cx, cy], { stroke: GRAY.hatch }),
        shape('circle', { cx, cy, r: 2.4, fill: GRAY.text }),
      ];
    }),
    textShape(left, top + TITLE - 6, `difference from the piece before, ${unit.title}`, {
      size: FONT.small,
    }),
  ];
}
