import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, segment, shape, textShape } from '../../elements/shape.ts';
import { fitText, textsWidth } from '../chart/fitText.ts';
import { type LegendItem, legend } from '../chart/legend.ts';
import { pictureRoot } from '../chart/pictureRoot.ts';
import { type DayColumn, dayColumns, momentAt } from './dayColumns.ts';
import { dueRow } from './dueRow.ts';
import { filledBar } from './filledBar.ts';
import { hourTicks } from './hourTicks.ts';
import { rowBars } from './rowBars.ts';
import type { Timetable, TimetableRow } from './timetable.ts';
import { timetableText } from './timetableText.ts';

/** Heights of a group's name, of the days' names and of the hours below [px]. */
const GROUP = 18;
const HEAD = 20;
const HOURS = 22;

/** The line of now. */
const NOW = { stroke: GRAY.text, 'stroke-width': 1.6, 'stroke-dasharray': '5 3' };

/** Everybody and everything in a row of their own, the days side by side, the due dates below. */
export function timetablePicture(timetable: Timetable, width: number): PlainElement {
  const { days, groups } = timetable;
  const key = legend(legendOf(timetable), { left: 8, top: 4, width: width - 16 });
  const names = groups.flatMap(({ rows }) => rows.map(({ name }) => name));
  const left = Math.min(width * 0.26, 14 + textsWidth([...names, 'Due']));
  const columns = dayColumns(days, [left, width - 10]);
  const top = key.height + HEAD + 8;
  let y = top;
  const rows: PlainElement[] = [];
  for (const { name, rows: inside } of groups) {
    rows.push(
      shape('rect', { x: 0, y, width, height: GROUP - 3, fill: '#eee' }),
      textShape(6, y + 12, name, { size: FONT.small, isBold: true }),
    );
    y += GROUP;
    for (const row of inside) y += drawRow(rows, row, { y, left, columns, timetable });
  }
  const dues = dueRow(timetable, { top: y, left, right: width - 10, columns });
  const bottom = y + dues.height;
  const texts = { ...timetable, text: timetableText(timetable) };
  return pictureRoot(texts, { width, height: bottom + HOURS }, [
    ...key.drawn,
    ...columns.flatMap((column) => dayHead(column, top - 8)),
    ...hourTicks(columns, { top, bottom, system: timetable.system }),
    ...rows,
    ...dues.drawn,
    ...nowLine(timetable, { top, bottom, columns }),
  ]);
}

interface RowPlace {
  readonly y: number;
  readonly left: number;
  readonly columns: readonly DayColumn[];
  readonly timetable: Timetable;
}

/** @returns its height */
function drawRow(
  into: PlainElement[],
  row: TimetableRow,
  { y, left, columns, timetable }: RowPlace,
): number {
  const { drawn, height } = rowBars(row, { top: y, columns, orders: timetable.orders });
  into.push(
    textShape(6, y + 15, fitText(row.name, left - 10, FONT.plain)),
    ...drawn,
    segment([0, y + height - 1], [columns[columns.length - 1]?.right ?? left, y + height - 1], {
      stroke: GRAY.grid,
    }),
  );
  return height;
}

function dayHead({ name, left, right }: DayColumn, y: number): readonly PlainElement[] {
  const shown = fitText(name, right - left, FONT.plain);
  return [textShape((left + right) / 2, y, shown, { anchor: 'middle', isBold: true })];
}

function nowLine(
  { now, days }: Timetable,
  { top, bottom, columns }: { top: number; bottom: number; columns: readonly DayColumn[] },
): readonly PlainElement[] {
  const isShown = days.some(({ from, to }) => now !== undefined && now >= from && now <= to);
  if (now === undefined || !isShown) return [];
  const x = momentAt(now, columns);
  return [segment([x, top], [x, bottom], NOW)];
}

/** The orders with their fills; the marks only where there are any. */
function legendOf({ orders, now }: Timetable): readonly LegendItem[] {
  const swatches = orders.map(
    ({ name }, order): LegendItem => ({
      draw: (x, y) => filledBar({ left: x + 2, top: y - 6, width: 20, height: 12 }, order),
      text: name,
    }),
  );
  if (now === undefined) return swatches;
  const dashes: LegendItem = {
    draw: (x, y) => [segment([x + 12, y - 8], [x + 12, y + 8], NOW)],
    text: 'now',
  };
  return [...swatches, dashes];
}
