import type { Alignment, Border, BorderStyle, Style } from '@cj-tech-master/excelts';
import type { IBorderData, IBorderStyleData, IStyleData } from '@univerjs/core';

const LINES: readonly (BorderStyle | undefined)[] = [
  undefined,
  'thin',
  'hair',
  'dotted',
  'dashed',
  'dashDot',
  'dashDotDot',
  'double',
  'medium',
  'mediumDashed',
  'mediumDashDot',
  'mediumDashDotDot',
  'slantDashDot',
  'thick',
];

const HORIZONTAL: readonly (Alignment['horizontal'] | undefined)[] = [
  undefined,
  'left',
  'center',
  'right',
  'justify',
];
const VERTICAL: readonly (Alignment['vertical'] | undefined)[] = [
  undefined,
  'top',
  'middle',
  'bottom',
];

const WRAP = 3;
const CLIP = 2;

/** `#rrggbb`, `#rgb` or `rgb(r, g, b)` as a file writes it. */
export function toArgb(color: string): string {
  const channels = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(color);
  if (channels) {
    const hex = channels.slice(1, 4).map((part) => Number(part).toString(16).padStart(2, '0'));
    return `FF${hex.join('')}`.toUpperCase();
  }
  const short = /^#?([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(color);
  const digits = short
    ? short
        .slice(1)
        .map((digit) => digit + digit)
        .join('')
    : color.replace('#', '');
  if (!/^[0-9a-f]{6}$/i.test(digits))
    throw new Error(`the workbook file cannot hold the color ${color}`);
  return `FF${digits.toUpperCase()}`;
}

function fromArgb(argb: string | undefined): { rgb: string } | undefined {
  return argb ? { rgb: `#${argb.slice(-6).toLowerCase()}` } : undefined;
}

/** A cell's look as an .xlsx file holds it. */
export function styleToFile(style: IStyleData): Partial<Style> {
  const pattern = style.n?.pattern;
  const background = style.bg?.rgb;
  return {
    ...(pattern ? { numFmt: pattern } : {}),
    ...(background
      ? { fill: { type: 'pattern', pattern: 'solid', fgColor: { argb: toArgb(background) } } }
      : {}),
    font: {
      ...(style.ff ? { name: style.ff } : { name: 'Arial' }),
      size: style.fs ?? 10,
      ...(style.bl === 1 ? { bold: true } : {}),
      ...(style.it === 1 ? { italic: true } : {}),
      ...(style.ul?.s === 1 ? { underline: true } : {}),
      ...(style.st?.s === 1 ? { strike: true } : {}),
      ...(style.cl?.rgb ? { color: { argb: toArgb(style.cl.rgb) } } : {}),
    },
    alignment: alignmentToFile(style),
    border: borderToFile(style.bd ?? {}),
  };
}

function alignmentToFile(style: IStyleData): Partial<Alignment> {
  const horizontal = HORIZONTAL[style.ht ?? 0];
  const vertical = VERTICAL[style.vt ?? 0];
  return {
    ...(horizontal ? { horizontal } : {}),
    ...(vertical ? { vertical } : {}),
    ...(style.tb === WRAP ? { wrapText: true } : {}),
    // A cut-off text has no name of its own in a file; "shrink" is not used for anything else here.
    ...(style.tb === CLIP ? { shrinkToFit: true } : {}),
  };
}

function borderToFile(border: IBorderData): Style['border'] {
  const side = (line: IBorderStyleData | null | undefined): Partial<Border> | undefined => {
    const style = line ? LINES[line.s] : undefined;
    if (!line || !style) return undefined;
    return { style, color: { argb: toArgb(line.cl.rgb ?? '#000000') } };
  };
  const sides = {
    top: side(border.t ?? null),
    bottom: side(border.b ?? null),
    left: side(border.l ?? null),
    right: side(border.r ?? null),
  };
  return Object.fromEntries(Object.entries(sides).filter(([, line]) => line !== undefined));
}

/** The look of a cell read from a file; undefined when it has none of its own. */
export function styleFromFile(style: Partial<Style>): IStyleData | undefined {
  const pattern = typeof style.numFmt === 'string' ? style.numFmt : style.numFmt?.formatCode;
  const fill = style.fill?.type === 'pattern' ? fromArgb(style.fill.fgColor?.argb) : undefined;
  const color = fromArgb(style.font?.color?.argb);
  const border = borderFromFile(style.border ?? {});
  const found: IStyleData = {
    ...(pattern && pattern !== 'General' ? { n: { pattern } } : {}),
    ...(fill ? { bg: fill } : {}),
    ...(style.font?.name && style.font.name !== 'Arial' ? { ff: style.font.name } : {}),
    ...(style.font?.size && style.font.size !== 10 ? { fs: style.font.size } : {}),
    ...(style.font?.bold ? { bl: 1 } : {}),
    ...(style.font?.italic ? { it: 1 } : {}),
    ...(style.font?.underline ? { ul: { s: 1 } } : {}),
    ...(style.font?.strike ? { st: { s: 1 } } : {}),
    ...(color ? { cl: color } : {}),
    ...alignmentFromFile(style.alignment ?? {}),
    ...(border ? { bd: border } : {}),
  };
  return Object.keys(found).length === 0 ? undefined : found;
}

function alignmentFromFile(alignment: Partial<Alignment>): IStyleData {
  const horizontal = HORIZONTAL.indexOf(alignment.horizontal);
  const vertical = VERTICAL.indexOf(alignment.vertical);
  return {
    ...(horizontal > 0 ? { ht: horizontal } : {}),
    ...(vertical > 0 ? { vt: vertical } : {}),
    ...(alignment.wrapText ? { tb: WRAP } : {}),
    ...(alignment.shrinkToFit ? { tb: CLIP } : {}),
  };
}

function borderFromFile(border: Partial<Style['border']>): IBorderData | undefined {
  const side = (line: Partial<Border> | undefined): IBorderStyleData | undefined => {
    const style = LINES.indexOf(line?.style);
    if (style < 1) return undefined;
    return { s: style, cl: fromArgb(line?.color?.argb) ?? { rgb: '#000000' } };
  };
  const sides = {
    t: side(border.top),
    b: side(border.bottom),
    l: side(border.left),
    r: side(border.right),
  };
  const drawn = Object.entries(sides).filter(([, line]) => line !== undefined);
  return drawn.length === 0 ? undefined : Object.fromEntries(drawn);
}
