import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, segment, shape, textShape } from '../../elements/shape.ts';
import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import type { Scale } from '../chart/linearScale.ts';
import { type Edges, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import type { ChartUnit } from './chartUnit.ts';
import { LIMIT } from './controlLegend.ts';

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
  const up = niceAxis([0, ...values, limit], {
    of: unit.of,
    title: '',
    room: PLOT,
    along: 'down',
    narrowest: unit.narrowest,
  });
  const across = { domain: [0, 1] as const, ticks: [], tickText: String, title: '' };
  const { y, drawn } = plotFrame(edges, across, up);
  return [
    ...drawn,
    segment([left, y(mean)], [right, y(mean)], { stroke: GRAY.text }),
    segment([left, y(limit)], [right, y(limit)], LIMIT),
    ...values.flatMap((value, index) => {
      const [cx, cy] = [x(index + 1), y(value)];
      return [
        segment([cx, y(0)], [cx, cy], { stroke: GRAY.hatch }),
        shape('circle', { cx, cy, r: 2.4, fill: GRAY.text }),
      ];
    }),
    textShape(left, top + TITLE - 6, `difference from the piece before, ${unit.title}`, {
      size: FONT.small,
    }),
  ];
}
