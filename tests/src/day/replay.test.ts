import { describe, expect, test } from 'vitest';
import type { ReplanAnswer } from '../../../shared/commands/dayCommands.ts';
import type { DayEntry } from '../../../shared/day/planning/dayTimetable.ts';
import { dayOrders } from '../../../shared/day/shop/dayOrders.ts';
import { dayShop } from '../../../shared/day/shop/dayShop.ts';
import { demoBook } from '../../../templates/demoShop/demoBook.ts';
import { brokenDay } from '../../day/planning/brokenDay.ts';
import { HOUR } from '../../day/planning/demoDay.ts';
import { openBench } from '../openBench.ts';

/** Tuesday in Denver, seven in the morning. */
const MIDNIGHT = Date.parse('2026-12-01T07:00:00Z');
let clock = new Date(MIDNIGHT + 7 * HOUR * 1000);

const book = openBench({ now: () => clock });

/** A name that takes more than a byte a letter */
const NAME = 'Zoë 渔';
const ASKED = { orders: '1007, 1009', firstDay: '2026-12-01', days: '3' };

function at(seconds: number): void {
  clock = new Date(MIDNIGHT + seconds * 1000);
}

/** Ticks a task on the sheet as done at a time of the day. */
function tick(id: string, seconds: number): void {
  const ids = book.host.texts('Checklist', 'J:J').map(([one]) => one);
  const row = ids.indexOf(id) + 1;
  if (row === 0) throw new Error(`no line ${id}`);
  const two = (part: number) => String(Math.floor(part)).padStart(2, '0');
  const time = `${two(seconds / HOUR)}:${two((seconds / 60) % 60)}:${two(seconds % 60)}`;
  book.host.type('Checklist', `F${row}`, `12/1/2026 ${time}`);
  book.host.type('Checklist', `A${row}`, 'TRUE');
}

async function replan(): Promise<ReplanAnswer> {
  const answer = await book.ask('replanDayFor', {});
  if (answer.kind !== 'ok') throw new Error(answer.problems[0]?.text);
  return answer;
}

function entryOf(entries: readonly DayEntry[], id: string): DayEntry {
  const found = entries.find((entry) => entry.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
}

/** What is neither ticked nor certain to have happened, nor goes on by itself, lies behind now. */
function expectAfterNow({ plan, now }: ReplanAnswer, ticked: ReadonlySet<string>): void {
  const open = plan.entries.filter(
    ({ id, what }) =>
      !ticked.has(id) && !plan.assumed.includes(id) && what !== 'heat' && what !== 'cool',
  );
  expect(open.length).toBeGreaterThan(0);
  expect(Math.min(...open.map(({ from }) => from))).toBeGreaterThanOrEqual(now);
}

/** The shop of the demo book could do the plan. */
function expectPossible({ plan }: ReplanAnswer, isReal: (words: string) => boolean): void {
  const asked = { firstDay: ASKED.firstDay, days: Number(ASKED.days) };
  const { day: demo } = dayShop(demoBook(), asked);
  const people = demo.people.map((one) => (one.name === 'JB' ? { ...one, name: NAME } : one));
  const day = { ...demo, people };
  const { orders } = dayOrders(demoBook(), ASKED.orders.split(', '), asked);
  const found = brokenDay(day, orders, plan);
  expect(found.filter((words) => !isReal(words))).toEqual([]);
}

describe('what a page may ask', { timeout: 60_000 }, () => {
  test.each([
    [
      { firstDay: 'Monday' },
      'first day',
      'first day must be a date such as 2026-11-30, got "Monday"',
    ],
    [{ days: '40' }, 'days', 'days must be at most 31, got 40'],
    [{ days: '1.5' }, 'days', 'days must be a whole number, got 1.5'],
    [{ day: '1' }, 'day', 'day must be a field that this command knows, got "1"'],
  ])('%o is refused', async (payload, field, text) => {
    const answer = await book.ask('planDayFor', payload);
    expect(answer).toEqual({ kind: 'refused', problems: [{ field, text }] });
  });

  test('without a plan that is followed nothing is replanned', async () => {
    expect(await book.ask('replanDayFor', {})).toEqual({
      kind: 'refused',
      problems: [
        { field: '', text: 'No plan is followed yet: write the checklist of a plan first.' },
      ],
    });
  });

  test('nothing said: every open order, five days from today; nothing that JSON would lose', async () => {
    const answer = await book.ask('planDayFor', {});
    if (answer.kind !== 'ok') throw new Error('it can be planned');
    expect([answer.firstDay, answer.days]).toEqual(['2026-12-01', 5]);
    expect(answer.runs.map(({ order }) => order)).toEqual(['1007', '1008', '1009', '1010']);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
    expect(JSON.stringify(answer)).not.toMatch(/null|NaN|Infinity/);
  });

  test('a share that its row refuses leaves the default in place', async () => {
    const shop = book.host.texts('Shop', 'A:A').map(([label]) => label);
    const cell = `B${shop.indexOf('Finish time: demold') + 1}`;
    const inspect = `B${shop.indexOf('Finish time: inspect') + 1}`;
    book.host.type('Shop', cell, '0.7');
    book.host.type('Shop', inspect, '0.5');
    await book.host.settled();
    // 0.7 is refused by the row itself and its default stands in; with it all is well.
    expect((await book.ask('planDayFor', ASKED)).kind).toBe('ok');
    book.host.type('Shop', cell, '0.4');
    book.host.type('Shop', inspect, '0.4');
  });
});

describe('a day replayed with two delays', { timeout: 60_000 }, () => {
  const ticked = new Set<string>();
  let morning: ReplanAnswer;

  test('first coloring takes 40 minutes longer: what waits for it moves, the rest stays', async () => {
    book.host.type('People', 'A2', NAME);
    await book.host.settled();
    const plan = await book.ask('planDayFor', ASKED);
    if (plan.kind !== 'ok') throw new Error('it can be planned');
    expect((await book.ask('writeChecklist', ASKED)).kind).toBe('ok');
    const color = plan.plan.entries.find(({ what }) => what === 'weigh and color');
    if (!color) throw new Error('something is colored');
    const now = color.to + 40 * 60;
    at(now);
    for (const { id, to, what } of plan.plan.entries)
      if (to <= color.from && what !== 'heat' && what !== 'cool') {
        ticked.add(id);
        tick(id, to);
      }
    ticked.add(color.id);
    tick(color.id, now);
    await book.host.settled();
    morning = await replan();
    expect(morning.now).toBe(now);
    expect(entryOf(morning.plan.entries, color.id).to).toBe(now);
    expectAfterNow(morning, ticked);
    expect(morning.plan.entries.some(({ person }) => person === NAME)).toBe(true);
    expectPossible(morning, () => false);
    const firstPour = ({ entries }: { readonly entries: readonly DayEntry[] }) =>
      Math.min(
        ...entries.filter((e) => e.what === 'cook' && e.order === color.order).map((e) => e.from),
      );
    expect(firstPour(morning.plan)).toBeGreaterThanOrEqual(now);
    expect(firstPour(plan.plan)).toBeLessThan(now);
    expect((await book.ask('updateChecklist', {})).kind).toBe('ok');
  });

  test('a layer poured 25 minutes late: its window is named, who packs later is told', async () => {
    const layers = morning.plan.entries.filter(({ what }) => what === 'pour');
    const last = layers.find(({ order, layer }) => order === '1009' && layer === 'stone');
    if (!last) throw new Error('1009 has a second layer');
    const late = 25 * 60;
    at(last.to + late);
    for (const { id, to, what } of morning.plan.entries)
      if (to <= last.from && !ticked.has(id) && what !== 'heat' && what !== 'cool') {
        ticked.add(id);
        tick(id, to);
      }
    ticked.add(last.id);
    tick(last.id, last.to + late);
    await book.host.settled();
    const noon = await replan();
    expect(entryOf(noon.plan.entries, last.id)).toMatchObject({
      from: last.from + late,
      to: last.to + late,
    });
    expectAfterNow(noon, ticked);
    // The stone layer of 1009 may follow at any time, its cooked cup may not stand so long.
    expect(noon.plan.brokenWindows.map(({ after }) => after)).toContain(last.id);
    // What cannot be kept any more is reported, nothing else is broken.
    const reported = noon.plan.brokenWindows.map(({ after }) => after.slice(0, 4));
    expectPossible(noon, (words) =>
      reported.some((order) => words.startsWith(order) && /stands|waits hot|too late/.test(words)),
    );
    const finish = (order: string, { plan }: ReplanAnswer) =>
      plan.orders.find((one) => one.order === order)?.finish ?? 0;
    expect(finish('1009', noon)).toBeGreaterThanOrEqual(finish('1009', morning));
    for (const { order, late: now, wasLate } of noon.plan.suffers)
      expect([order, now > wasLate]).toEqual([order, true]);
    expect(noon.plan.unplanned).toEqual([]);
  });
});
