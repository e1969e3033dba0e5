import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, type Point, pixels, type ShapeAttributes, shape } from '../../elements/shape.ts';

/** A line through points; nothing where there is no point. */
export function lineShape(
  points: readonly Point[],
  looks: ShapeAttributes,
): readonly PlainElement[] {
  if (points.length === 0) return [];
  return [shape('path', { d: pathOf(points), fill: 'none', stroke: GRAY.text, ...looks })];
}

/** The gray band between two lines; nothing where there is no point. */
export function bandShape(
  upper: readonly Point[],
  lower: readonly Point[],
): readonly PlainElement[] {
  const points = [...upper, ...lower.slice().reverse()];
  return points.length === 0 ? [] : [shape('path', { d: `${pathOf(points)}Z`, fill: GRAY.band })];
}

function pathOf(points: readonly Point[]): string {
  return `M${points.map(([x, y]) => `${pixels(x)},${pixels(y)}`).join('L')}`;
}
