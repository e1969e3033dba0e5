import { describe, expect, test } from 'vitest';
import type { DayBar, DayTimetable } from '../../../shared/day/planning/dayTimetable.ts';
import { timetableOf } from '../../../shared/pictures/timetable/timetableOf.ts';

const HOUR = 3600;
const DAY = 24 * HOUR;
const FRAME = { firstDay: '2026-11-30', system: 'US' } as const;

function bar(
  kind: DayBar['kind'],
  name: string,
  [from, to]: readonly [number, number],
  more: Partial<DayBar> = {},
): DayBar {
  return { id: `${kind} ${name} ${from}`, kind, name, amount: 1, order: '2101', from, to, ...more };
}

const PLAN: Pick<DayTimetable, 'bars' | 'orders'> = {
  bars: [
    bar('person', 'Ada', [8.2 * HOUR, 9 * HOUR], { what: 'weigh and color' }),
    bar('person', 'Ada', [10 * HOUR, 11 * HOUR]),
    bar('plate', 'Griddle', [9 * HOUR, 11.4 * HOUR]),
    bar('mold', 'Grub', [9 * HOUR, DAY + 9 * HOUR]),
    bar('cups', '', [9 * HOUR, 10 * HOUR]),
    bar('color bench', '', [8.2 * HOUR, 9 * HOUR]),
    bar('person', 'Ben', [DAY + 9.1 * HOUR, DAY + 10 * HOUR], { order: '2102', what: 'demold' }),
  ],
  orders: [
    { order: '2101', finish: DAY + 12 * HOUR, due: 2 * DAY, late: 0 },
    { order: '2102', finish: DAY + 10 * HOUR, due: DAY + 17 * HOUR, late: 0 },
    { order: '2103', finish: 0, due: 17 * HOUR, late: 0 },
  ],
};

describe('timetableOf', () => {
  test('shows the full hours in which somebody works, without the nights in which molds cool', () => {
    expect(timetableOf(PLAN, FRAME).days).toEqual([
      { name: 'Mon Nov 30', from: 8 * HOUR, to: 12 * HOUR },
      { name: 'Tue Dec 1', from: DAY + 9 * HOUR, to: DAY + 10 * HOUR },
    ]);
  });

  test('has people, plates, molds, ovens and the bench, but no cups', () => {
    const { groups } = timetableOf(PLAN, FRAME);
    expect(groups.map(({ name, rows }) => [name, rows.map((row) => row.name)])).toEqual([
      ['People', ['Ada', 'Ben']],
      ['Plates', ['Griddle']],
      ['Molds', ['Grub']],
      ['Coloring', ['Bench']],
    ]);
    // A person who is held through a round pours.
    expect(groups[0]?.rows[0]?.bars.map(({ text }) => text)).toEqual(['weigh and color', 'pour']);
  });

  test('one day alone has its own bars and the orders that are worked on or due then', () => {
    const monday = timetableOf(PLAN, { ...FRAME, day: 0 });
    expect(monday.title).toBe('Pour day Mon Nov 30');
    expect(monday.orders.map(({ name }) => name)).toEqual(['2101', '2103']);
    const tuesday = timetableOf(PLAN, { ...FRAME, day: 1 });
    expect(tuesday.groups.map(({ name }) => name)).toEqual(['People']);
    expect(timetableOf(PLAN, { ...FRAME, day: 5 })).toMatchObject({
      title: 'Pour day',
      days: [],
      groups: [],
    });
  });
});
