import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, outline, textShape } from '../../elements/shape.ts';
import { barLanes } from '../chart/barLanes.ts';
import { textWidth } from '../chart/fitText.ts';
import { type DayColumn, momentAt } from './dayColumns.ts';
import type { Timetable, TimetableOrder } from './timetable.ts';

const LANE = 17;
const MARK = 6;

/** When orders are due: a mark each, its name beside it, those that are late in words. */
export function dueRow(
  { orders, days }: Timetable,
  {
    top,
    left,
    right,
    columns,
  }: {
    readonly top: number;
    readonly left: number;
    readonly right: number;
    readonly columns: readonly DayColumn[];
  },
): { readonly drawn: readonly PlainElement[]; readonly height: number } {
  const [first, last] = [days[0]?.from ?? 0, days[days.length - 1]?.to ?? 0];
  const shown = orders.flatMap((order) => {
    const { due } = order;
    // A due in the evening belongs to the day that ends before it.
    if (due === undefined || due < first || due > last + EVENING) return [];
    return [placed(order, momentAt(due, columns), { left, right })];
  });
  if (shown.length === 0) return { drawn: [], height: 0 };
  const lanes = barLanes(
    shown.sort((one, other) => one.start - other.start),
    ({ start, end }) => [start, end],
  );
  return {
    height: lanes.lanes * LANE + 4,
    drawn: [
      textShape(6, top + 14, 'Due', { isBold: true }),
      ...lanes.placed.flatMap(({ item: { x, text, isLeft, isLate }, lane }) => {
        const y = top + 2 + lane * LANE;
        return [
          outline(
            [
              [x - MARK, y + 2],
              [x + MARK, y + 2],
              [x, y + 13],
            ],
            { fill: isLate ? GRAY.text : '#fff', stroke: GRAY.text, 'stroke-width': 1.2 },
          ),
          textShape(isLeft ? x - MARK - 3 : x + MARK + 3, y + 12, text, {
            size: FONT.small,
            isBold: isLate,
            anchor: isLeft ? 'end' : 'start',
          }),
        ];
      }),
    ],
  };
}

/** To the end of the last day [s], at the most. */
const EVENING = 12 * 3600;

function placed(
  { name, late }: TimetableOrder,
  x: number,
  { left, right }: { readonly left: number; readonly right: number },
) {
  const isLate = late > 0;
  const text = isLate ? `${name} late` : name;
  const wide = textWidth(text, FONT.small) + MARK + 8;
  // Most are due when a day ends: to the left the name stays in its day.
  const isLeft = x - wide >= left || x + wide > right;
  const [start, end] = isLeft ? [x - wide, x + MARK + 3] : [x - MARK - 3, x + wide];
  return { x, text, isLeft, isLate, start, end };
}
