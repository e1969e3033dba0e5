import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, segment, textShape } from '../../elements/shape.ts';
import { fitText } from './fitText.ts';
import { placesApart } from './placesApart.ts';
import type { PlotFrame } from './plotFrame.ts';

/** A curve's or line's name at its right end; both places as values of the picture. */
export interface EndLabel {
  /** Where the curve ends, when that is before the edge of the plot */
  readonly x?: number;
  readonly y: number;
  readonly text: string;
  readonly isBold?: boolean;
}

const GAP = 16;
const LEADER = 14;

/** Names beside the plot, each as near to its line as the others let it, with a leader from the line. */
export function endLabels(
  labels: readonly EndLabel[],
  frame: PlotFrame,
  width: number,
): readonly PlainElement[] {
  const { right, top, bottom } = frame.edges;
  const places = placesApart(
    labels.map(({ y }) => frame.y(y)),
    GAP,
    [top + 4, bottom - 4],
  );
  return labels.flatMap(({ x, y, text, isBold = false }, index) => {
    const end = [x === undefined ? right : frame.x(x), frame.y(y)] as const;
    const place = places[index] ?? end[1];
    return [
      segment([end[0] + 1, end[1]], [right + LEADER - 3, place], { 'stroke-width': 0.7 }),
      textShape(right + LEADER, place + 4, fitText(text, width - right - LEADER - 2, FONT.small), {
        size: FONT.small,
        isBold,
      }),
    ];
  });
}
