import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, type ShapeAttributes, segment, shape, textShape } from '../../elements/shape.ts';
import { fitText, textWidth } from './fitText.ts';
import { pointMark } from './pointMark.ts';

/** A swatch 24 px wide around a middle line, and what it means. */
export interface LegendItem {
  readonly draw: (x: number, y: number) => readonly PlainElement[];
  readonly text: string;
}

const SWATCH = 24;
const GAP = 16;
const LINE = 18;

/** What lines and fills mean, flowing over as many lines as it takes; `height` is what it takes up. */
export function legend(
  items: readonly LegendItem[],
  { left, top, width }: { left: number; top: number; width: number },
): { readonly drawn: readonly PlainElement[]; readonly height: number } {
  let [x, y] = [left, top];
  const drawn = items.flatMap(({ draw, text }) => {
    const fitted = fitText(text, width - SWATCH - 6, FONT.small);
    const wide = SWATCH + 6 + textWidth(fitted, FONT.small);
    if (x > left && x + wide > left + width) [x, y] = [left, y + LINE];
    const middle = y + LINE / 2;
    const item = [
      ...draw(x, middle),
      textShape(x + SWATCH + 6, middle + 4, fitted, { size: FONT.small }),
    ];
    x += wide + GAP;
    return item;
  });
  return { drawn, height: items.length === 0 ? 0 : y + LINE - top };
}

/** The swatch of a line. */
export function lineSwatch(looks: ShapeAttributes): LegendItem['draw'] {
  return (x, y) => [segment([x, y], [x + SWATCH, y], looks)];
}

/** The swatch of a band. */
export function bandSwatch(looks: ShapeAttributes): LegendItem['draw'] {
  return (x, y) => [shape('rect', { x, y: y - 6, width: SWATCH, height: 12, ...looks })];
}

/** The swatch of a mark, by its form. */
export function markSwatch(form: number): LegendItem['draw'] {
  return (x, y) => [pointMark([x + SWATCH / 2, y], form)];
}
