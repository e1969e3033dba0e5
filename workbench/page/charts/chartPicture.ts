import { extent, ticks } from 'd3-array';

export interface ChartData {
  readonly title: string;
  /** Columns unless it says lines. */
  readonly kind?: 'lines';
  readonly groups: readonly string[];
  /** A value for each group; undefined where the cell holds no number. */
  readonly series: readonly {
    readonly name: string;
    readonly values: readonly (number | undefined)[];
  }[];
}

/** [px] */
const SIZE = { width: 460, height: 220 } as const;
const EDGE = { left: 58, right: 10, top: 44, bottom: 28 } as const;

/** Room of a group's name [px]; of groups that stand closer only some are named. */
const LABEL = 90;

/** Told apart in print too: dark, light, middle. */
const FILLS = ['#3b5b52', '#c9a25b', '#8a8f94'] as const;

/** A chart of columns or lines as inline SVG, with its values as words for those who do not see it. */
export function chartPicture({ title, kind, groups, series }: ChartData): SVGElement {
  const [least = 0, greatest = 0] = extent([
    0,
    ...series.flatMap(({ values }) => values.filter(isNumber)),
  ]);
  const marks = ticks(least, greatest === least ? least + 1 : greatest, 4);
  const low = Math.min(least, ...marks);
  const high = Math.max(greatest, ...marks, low + Number.EPSILON);
  const y = (value: number) =>
    SIZE.height -
    EDGE.bottom -
    ((value - low) / (high - low)) * (SIZE.height - EDGE.top - EDGE.bottom);
  const step = (SIZE.width - EDGE.left - EDGE.right) / Math.max(1, groups.length);
  const every = Math.max(1, Math.ceil(LABEL / step));
  const words = groups.map(
    (group, at) =>
      `${group}: ${series.map(({ name, values }) => `${name} ${values[at] ?? 'none'}`).join(', ')}`,
  );
  return svg(
    'svg',
    {
      viewBox: `0 0 ${SIZE.width} ${SIZE.height}`,
      width: SIZE.width,
      height: SIZE.height,
      role: 'img',
      'aria-label': `${title}. ${words.join('; ')}`,
    },
    label(title, { x: EDGE.left, y: 16, 'font-weight': 600 }),
    ...series.flatMap(({ name }, at) => legend(name, at)),
    ...marks.flatMap((mark) => gridLine(mark, y(mark))),
    ...(kind === 'lines' ? lines(series, { step, y }) : bars(series, { step, y })),
    ...groups.map((group, at) =>
      label(at % every === 0 ? group : '', {
        x: EDGE.left + step * (at + 0.5),
        y: SIZE.height - 10,
        'text-anchor': 'middle',
      }),
    ),
  );
}

interface Places {
  /** From one group to the next [px]. */
  readonly step: number;
  readonly y: (value: number) => number;
}

function bars(series: ChartData['series'], { step, y }: Places): readonly SVGElement[] {
  const wide = Math.min(28, (step * 0.8) / Math.max(1, series.length));
  return series.flatMap(({ values }, at) =>
    values.flatMap((value, group) => {
      if (value === undefined) return [];
      const x = EDGE.left + step * (group + 0.5) + wide * (at - series.length / 2);
      const top = Math.min(y(value), y(0));
      const height = Math.abs(y(value) - y(0));
      return [svg('rect', { x, y: top, width: wide, height, fill: fillOf(at) })];
    }),
  );
}

/** A line for each series, broken where a cell holds no number; from the second on dashed, to be told apart in print. */
function lines(series: ChartData['series'], { step, y }: Places): readonly SVGElement[] {
  return series.map(({ values }, at) => {
    const d = values.flatMap((value, group) => {
      if (value === undefined) return [];
      const start = group === 0 || values[group - 1] === undefined ? 'M' : 'L';
      return [`${start}${EDGE.left + step * (group + 0.5)},${y(value)}`];
    });
    const dashes = at === 0 ? 'none' : `${2 + 3 * at} 3`;
    const looks = { fill: 'none', stroke: fillOf(at), 'stroke-width': 2 };
    return svg('path', { d: d.join(''), ...looks, 'stroke-dasharray': dashes });
  });
}

function fillOf(at: number): string {
  return FILLS[at % FILLS.length] ?? '';
}

function legend(name: string, at: number): readonly SVGElement[] {
  const x = EDGE.left + at * 96;
  return [
    svg('rect', { x, y: 24, width: 10, height: 10, fill: fillOf(at) }),
    label(name, { x: x + 14, y: 33 }),
  ];
}

function gridLine(mark: number, y: number): readonly SVGElement[] {
  const { left, right } = EDGE;
  return [
    svg('line', {
      x1: left,
      x2: SIZE.width - right,
      y1: y,
      y2: y,
      stroke: mark === 0 ? '#1d2327' : '#d5d1c8',
    }),
    label(String(mark), { x: left - 6, y: y + 4, 'text-anchor': 'end' }),
  ];
}

function label(text: string, attributes: Attributes): SVGElement {
  return svg('text', { 'font-size': 11, fill: '#1d2327', ...attributes }, text);
}

type Attributes = Readonly<Record<string, string | number>>;

function svg(
  name: string,
  attributes: Attributes,
  ...children: readonly (Node | string)[]
): SVGElement {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  made.append(...children);
  return made;
}

function isNumber(value: number | undefined): value is number {
  return value !== undefined;
}
