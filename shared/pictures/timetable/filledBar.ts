import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, pixels, shape } from '../../elements/shape.ts';

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Grounds and lines that stay apart on any copier; a seventh order begins again. */
const FILLS = [
  { ground: '#fff', lines: 'none' },
  { ground: GRAY.band, lines: 'none' },
  { ground: '#fff', lines: 'up' },
  { ground: '#999', lines: 'none' },
  { ground: '#fff', lines: 'down' },
  { ground: GRAY.band, lines: 'across' },
] as const;

const STEP = 5;

/** A bar filled so that it is told from others without color. */
export function filledBar(box: Box, order: number): readonly PlainElement[] {
  const { left, top, width, height } = box;
  const fill = FILLS[order % FILLS.length] ?? FILLS[0];
  const outline = {
    ...{ x: left, y: top, width: Math.max(width, 1), height },
    ...{ stroke: GRAY.text, 'stroke-width': 1 },
  };
  const d = fill.lines === 'none' ? '' : lines(box, fill.lines);
  return [
    shape('rect', { ...outline, fill: fill.ground }),
    ...(d === ''
      ? []
      : [shape('path', { d, fill: 'none', stroke: GRAY.line, 'stroke-width': 0.8 })]),
  ];
}

function lines({ left, top, width, height }: Box, lean: 'up' | 'down' | 'across'): string {
  const [right, bottom] = [left + width, top + height];
  if (lean === 'across')
    return every(top + STEP / 2, bottom, (y) => line([left, y], [right, y])).join('');
  return every(left - height + STEP, right, (x) => {
    // A line at 45 degrees from x on one edge to x + height on the other, cut to the bar.
    const start = Math.max(x, left);
    const end = Math.min(x + height, right);
    if (end <= start) return '';
    const [near, far] = [start - x, end - x];
    return lean === 'down'
      ? line([start, top + near], [end, top + far])
      : line([start, bottom - near], [end, bottom - far]);
  }).join('');
}

function every(from: number, to: number, make: (at: number) => string): readonly string[] {
  const count = Math.max(0, Math.ceil((to - from) / STEP));
  return Array.from({ length: count }, (_, index) => make(from + index * STEP));
}

function line([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]): string {
  return `M${pixels(x1)},${pixels(y1)}L${pixels(x2)},${pixels(y2)}`;
}
