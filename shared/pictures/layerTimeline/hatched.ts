import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, type Point, pixels, shape } from '../../elements/shape.ts';

/** Between hatch lines, along the upper edge [px]. */
const STEP = 6;

/** The slanted strip between two edges, each from its upper to its lower end. */
export interface Strip {
  readonly from: readonly [upper: Point, lower: Point];
  readonly to: readonly [upper: Point, lower: Point];
}

/** A strip filled with lines across it: uncertain, and told from gray on any copier. */
export function hatched(strip: Strip): PlainElement {
  const [[left, top], [leftBelow, bottom]] = strip.from;
  const [[right], [rightBelow]] = strip.to;
  const height = bottom - top;
  const start = Math.min(left, leftBelow);
  const count = Math.ceil((Math.max(right, rightBelow) + height - start) / STEP);
  const lines = Array.from({ length: Math.max(count, 0) }, (_, index) =>
    lineAcross(strip, start + index * STEP),
  );
  return shape('path', {
    d: `M${pixels(left)},${pixels(top)}${lines.join('')}`,
    fill: 'none',
    stroke: GRAY.hatch,
    'stroke-width': 0.8,
  });
}

/** From `x` on the upper edge downward to the left at 45 degrees, as far as it runs within the strip. */
function lineAcross({ from, to }: Strip, x: number): string {
  const [[left, top], [leftBelow, bottom]] = from;
  const [[right], [rightBelow]] = to;
  const height = bottom - top;
  // At share t of the height the line is at x - t height; the edges are straight in t too.
  const [start, end] = within(
    [x - left, -height - (leftBelow - left)],
    within([right - x, rightBelow - right + height], [0, 1]),
  );
  if (end <= start) return '';
  const at = (share: number) => `${pixels(x - share * height)},${pixels(top + share * height)}`;
  return `M${at(start)}L${at(end)}`;
}

/** The part of a range of t in which a + b t is not negative. */
function within(
  [a, b]: readonly [a: number, b: number],
  [low, high]: readonly [low: number, high: number],
): readonly [low: number, high: number] {
  if (b === 0) return a >= 0 ? [low, high] : [0, 0];
  return b > 0 ? [Math.max(low, -a / b), high] : [low, Math.min(high, -a / b)];
}
