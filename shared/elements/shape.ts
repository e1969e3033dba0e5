import type { PlainElement, SvgAttribute, SvgTag } from './plainElement.ts';

/** Everything in a picture is black, white or one of these, so that it prints and copies without color. */
export const GRAY = { text: '#000', line: '#444', grid: '#ddd', band: '#cfcfcf', hatch: '#888' };

/** Font sizes [px at natural size]: 12 px are 9 pt on paper. */
export const FONT = { small: 12, plain: 13 } as const;

/** Attributes of one element of a drawing. */
export type ShapeAttributes = Readonly<Partial<Record<SvgAttribute, string | number>>>;

/** One element of a drawing. Numbers are rounded to a tenth of a pixel. */
export function shape(
  tag: SvgTag,
  attributes: ShapeAttributes,
  children: readonly (PlainElement | string)[] = [],
): PlainElement {
  const texts: Partial<Record<SvgAttribute, string>> = {};
  for (const [name, value] of Object.entries(attributes))
    texts[name as SvgAttribute] = typeof value === 'number' ? pixels(value) : value; // names of the type above
  return { tag, attributes: texts, children };
}

/** A coordinate as text, never with an exponent. */
export function pixels(value: number): string {
  return String(Math.round(value * 10) / 10);
}

interface TextLooks {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly size?: number;
  readonly isBold?: boolean;
}

/** A text with a white edge, readable on grid and bands. */
export function textShape(
  x: number,
  y: number,
  text: string,
  { anchor = 'start', size = FONT.plain, isBold = false }: TextLooks = {},
): PlainElement {
  return shape(
    'text',
    {
      x,
      y,
      'font-size': size,
      fill: GRAY.text,
      stroke: '#fff',
      'stroke-width': 3,
      'stroke-linejoin': 'round',
      'paint-order': 'stroke',
      ...(anchor === 'start' ? {} : { 'text-anchor': anchor }),
      ...(isBold ? { 'font-weight': 'bold' } : {}),
    },
    [text],
  );
}

export type Point = readonly [x: number, y: number];

export function segment(from: Point, to: Point, looks: ShapeAttributes = {}): PlainElement {
  const [x1, y1] = from;
  const [x2, y2] = to;
  return shape('line', { x1, y1, x2, y2, stroke: GRAY.line, 'stroke-width': 1, ...looks });
}

/** A closed outline through the points, filled. */
export function outline(points: readonly Point[], looks: ShapeAttributes): PlainElement {
  return shape('path', { d: `M${points.map(at).join('L')}Z`, ...looks });
}

function at([x, y]: Point): string {
  return `${pixels(x)},${pixels(y)}`;
}
