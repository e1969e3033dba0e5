import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, segment, textShape } from '../../elements/shape.ts';
import { fitText, textWidth } from './fitText.ts';
import type { PlotFrame } from './plotFrame.ts';

/** Something that happens at a moment, named above the plot; `x` as a value of the picture. */
export interface EventLine {
  readonly x: number;
  readonly text: string;
}

const LINE = 15;

/** Height that the names of so many events take above a plot [px]. */
export function eventsHeight(count: number): number {
  return count * LINE;
}

/** A fine upright line for each event, its name on a line of its own, the first highest so that no later line runs through it,
 * anywhere between left and right. */
export function eventLines(
  events: readonly EventLine[],
  frame: PlotFrame,
  { highest, left, right }: { highest: number; left: number; right: number },
): readonly PlainElement[] {
  const { top, bottom } = frame.edges;
  const placed = events.map((event, index) => {
    const { text } = event;
    const x = frame.x(event.x);
    const fitted = fitText(text, right - left, FONT.small);
    const wide = textWidth(fitted, FONT.small);
    const y = Math.min(top - 5, highest + (index + 1) * LINE - 3);
    const isRight = x + 5 + wide <= right;
    const isLeft = !isRight && x - 5 - wide >= left;
    const start = isRight ? x + 5 : isLeft ? x - 5 : left;
    return {
      line: segment([x, y - 10], [x, bottom], { 'stroke-dasharray': '1 3', 'stroke-width': 1.2 }),
      name: textShape(start, y, fitted, { size: FONT.small, anchor: isLeft ? 'end' : 'start' }),
    };
  });
  // Names last: their white edge then breaks the lines of later events.
  return [...placed.map(({ line }) => line), ...placed.map(({ name }) => name)];
}
