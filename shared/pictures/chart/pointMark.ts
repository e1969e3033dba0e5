import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, outline, type Point, segment, shape } from '../../elements/shape.ts';

const SIZE = 4.5;
const LOOKS = { fill: '#fff', stroke: GRAY.text, 'stroke-width': 1.5 } as const;

/** A reading's mark; each trial has its own form, told apart without color. After five the forms begin again. */
export function pointMark([x, y]: Point, form: number): PlainElement {
  switch (form % 5) {
    case 0:
      return shape('circle', { cx: x, cy: y, r: SIZE, ...LOOKS });
    case 1:
      return shape('rect', { x: x - 4, y: y - 4, width: 8, height: 8, ...LOOKS });
    case 2:
      return outline(
        [
          [x, y - 5.5],
          [x + 5, y + 4],
          [x - 5, y + 4],
        ],
        LOOKS,
      );
    case 3:
      return outline(
        [
          [x, y - 6],
          [x + 5, y],
          [x, y + 6],
          [x - 5, y],
        ],
        LOOKS,
      );
    default:
      return shape('g', {}, [
        segment([x - 4, y - 4], [x + 4, y + 4], { stroke: GRAY.text, 'stroke-width': 2 }),
        segment([x - 4, y + 4], [x + 4, y - 4], { stroke: GRAY.text, 'stroke-width': 2 }),
      ]);
  }
}
