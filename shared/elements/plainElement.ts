/** Tags of HTML that a page is drawn with; nothing that runs, loads or links. */
export const ELEMENT_TAGS = [
  'article',
  'header',
  'section',
  'h1',
  'h2',
  'h3',
  'p',
  'div',
  'span',
  'strong',
  'ul',
  'ol',
  'li',
  'dl',
  'dt',
  'dd',
  'figure',
  'figcaption',
  'table',
  'caption',
  'colgroup',
  'col',
  'thead',
  'tbody',
  'tr',
  'th',
  'td',
] as const;

/** Attributes that an HTML element may carry; `width` is a share for `col` and becomes a style of the drawing side. */
export const ELEMENT_ATTRIBUTES = ['class', 'scope', 'span', 'width', 'aria-label'] as const;

/** Tags of a drawing: shapes and texts. No `use`, `image`, `a`, `style`, `script`, `foreignObject`, nothing that animates. */
export const SVG_TAGS = [
  'svg',
  'g',
  'path',
  'line',
  'rect',
  'circle',
  'polyline',
  'text',
  'tspan',
  'title',
  'desc',
] as const;

/** What an attribute of a drawing may hold. A fill or stroke is a plain gray, so no value can point anywhere. */
export const SVG_VALUES = {
  number: /^-?\d+(\.\d+)?$/,
  numbers: /^-?\d+(\.\d+)?([ ,]-?\d+(\.\d+)?)*$/,
  path: /^[MLHVCQAZmlhvcqaz\d ,.-]+$/,
  'viewBox of 0 0 width height': /^0 0 \d+(\.\d+)? \d+(\.\d+)?$/,
  'translate or rotate': /^(translate|rotate)\(-?\d+(\.\d+)?(,-?\d+(\.\d+)?){0,2}\)$/,
  'color in hexadecimal or none': /^(none|#[\da-f]{3}|#[\da-f]{6})$/,
  'lower-case names': /^[a-z][a-z\d-]*( [a-z][a-z\d-]*)*$/,
  'font names': /^[A-Za-z][A-Za-z ,-]*$/,
} as const;

/** Attributes of a drawing, each with the kind of value that it takes. */
export const SVG_ATTRIBUTES = {
  x: 'number',
  y: 'number',
  x1: 'number',
  x2: 'number',
  y1: 'number',
  y2: 'number',
  cx: 'number',
  cy: 'number',
  r: 'number',
  width: 'number',
  height: 'number',
  'stroke-width': 'number',
  'font-size': 'number',
  points: 'numbers',
  'stroke-dasharray': 'numbers',
  d: 'path',
  viewBox: 'viewBox of 0 0 width height',
  transform: 'translate or rotate',
  fill: 'color in hexadecimal or none',
  stroke: 'color in hexadecimal or none',
  'text-anchor': 'lower-case names',
  'font-weight': 'lower-case names',
  'stroke-linecap': 'lower-case names',
  'stroke-linejoin': 'lower-case names',
  'paint-order': 'lower-case names',
  role: 'lower-case names',
  id: 'lower-case names',
  class: 'lower-case names',
  'aria-labelledby': 'lower-case names',
  'font-family': 'font names',
} as const satisfies Readonly<Record<string, keyof typeof SVG_VALUES>>;

export type ElementTag = (typeof ELEMENT_TAGS)[number];
export type SvgTag = (typeof SVG_TAGS)[number];
export type SvgAttribute = keyof typeof SVG_ATTRIBUTES;
type Attribute = (typeof ELEMENT_ATTRIBUTES)[number] | SvgAttribute;

/** An element as plain data: text stays text whatever it holds. */
export interface PlainElement {
  readonly tag: ElementTag | SvgTag;
  readonly attributes: Readonly<Partial<Record<Attribute, string>>>;
  readonly children: readonly (PlainElement | string)[];
}
