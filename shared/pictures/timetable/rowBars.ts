import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, textShape } from '../../elements/shape.ts';
import { barLanes } from '../chart/barLanes.ts';
import { textWidth } from '../chart/fitText.ts';
import { type DayColumn, partsShown } from './dayColumns.ts';
import { filledBar } from './filledBar.ts';
import type { TimetableBar, TimetableOrder, TimetableRow } from './timetable.ts';

/** Height of a bar, and of the lane it runs in [px]. */
const BAR = 17;
const LANE = 20;

/** The bars of one row, those at the same time below each other. */
export function rowBars(
  { bars }: TimetableRow,
  {
    top,
    columns,
    orders,
  }: {
    readonly top: number;
    readonly columns: readonly DayColumn[];
    readonly orders: readonly TimetableOrder[];
  },
): { readonly drawn: readonly PlainElement[]; readonly height: number } {
  const shown = bars
    .filter((bar) => partsShown(bar, columns).length > 0)
    .sort((one, other) => one.from - other.from);
  const { placed, lanes } = barLanes(shown, ({ from, to }) => [from, to]);
  const drawn = placed.flatMap(({ item, lane }) =>
    partsShown(item, columns).flatMap(([left, right]) => {
      const box = { left, top: top + lane * LANE + 1, width: right - left, height: BAR };
      const { order } = item;
      return [...filledBar(box, order), ...label(item, orders[order]?.name ?? '', box)];
    }),
  );
  return { drawn, height: Math.max(1, lanes) * LANE + 1 };
}

/** Order and task where there is room, else the order, else nothing: the fill says it. */
function label(
  { text }: TimetableBar,
  name: string,
  { left, top, width }: { left: number; top: number; width: number },
): readonly PlainElement[] {
  const room = width - 5;
  const fitting = [`${name} ${text}`.trim(), name].find(
    (one) => one !== '' && textWidth(one, FONT.small) <= room,
  );
  if (fitting === undefined) return [];
  return [textShape(left + width / 2, top + 13, fitting, { size: FONT.small, anchor: 'middle' })];
}
