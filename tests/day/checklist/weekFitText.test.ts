import { describe, expect, test } from 'vitest';
import { replanTexts } from '../../../shared/day/checklist/replanTexts.ts';
import {
  bottleneckText,
  boundTexts,
  oneMoreText,
  orderOutcomeText,
  plateSequences,
  weekFitText,
} from '../../../shared/day/checklist/weekFitText.ts';
import type { DayPlan } from '../../../shared/day/planning/planDay.ts';
import type { Replanned } from '../../../shared/day/planning/replanDay.ts';
import { hoursText } from '../../../shared/words/hoursText.ts';
import { dayText, momentText } from '../../../shared/words/momentText.ts';
import { FRAME } from './dayData.ts';

const HOUR = 3600;

const PLAN: DayPlan = {
  entries: [],
  bars: [
    bar('Flat plate', '2101', 8),
    bar('Flat plate', '2101', 9),
    bar('Flat plate', '2102', 10),
    bar('Flat plate', '2101', 11),
    bar('Griddle', '2103', 8),
  ],
  orders: [
    { order: '2101', finish: 12 * HOUR, due: 17 * HOUR, late: 0 },
    { order: '2102', finish: 13 * HOUR, late: 0 },
  ],
  cost: { lateness: 0, finish: 13 * HOUR },
  bound: { lateness: 0, finish: 11.5 * HOUR },
  iterations: 1,
  critical: [],
  loads: [{ kind: 'plate', name: 'Flat plate', load: 0.837 }],
  unplanned: [],
};

function bar(name: string, order: string, hour: number): DayPlan['bars'][number] {
  return {
    id: `plate for ${order} at ${hour}`,
    kind: 'plate',
    name,
    amount: 1,
    order,
    from: hour * HOUR,
    to: (hour + 1) * HOUR,
  };
}

const LATE: DayPlan = {
  ...PLAN,
  orders: [{ order: '2101', finish: 20 * HOUR, due: 17 * HOUR, late: 3 * HOUR }],
  cost: { lateness: 3 * HOUR, finish: 20 * HOUR },
  bound: { lateness: 2.5 * HOUR, finish: 20 * HOUR },
  unplanned: [{ order: '2104', because: 'nobody is there to pour' }],
};

describe('words of a pour day', () => {
  test.each([
    [0, '0 min'],
    [1, '1 min'],
    [2400, '40 min'],
    [3600, '1 h'],
    [7201, '2 h 1 min'],
  ])('%d s late is %s: never less than it is', (seconds, text) => {
    expect(hoursText(seconds)).toBe(text);
  });

  test('a moment has its weekday, over the end of a month', () => {
    expect(dayText(FRAME, 0)).toBe('Mon Nov 30');
    expect(momentText(24 * HOUR + 9 * HOUR + 300, FRAME)).toBe('Tue Dec 1, 9:05 am');
    expect(momentText(13 * HOUR, { ...FRAME, system: 'metric' })).toBe('Mon Nov 30, 13:00');
  });

  test('says whether it fits, and if not, what does not', () => {
    expect(weekFitText(PLAN, FRAME)).toBe(
      'It fits. All 2 orders are packed by Mon Nov 30, 1:00 pm.',
    );
    expect(weekFitText(LATE, FRAME)).toBe('It does not fit; late: 2101; without a place: 2104.');
    expect(weekFitText({ ...PLAN, orders: [] }, FRAME)).toBe('Nothing can be planned.');
  });

  test('says how far from the best it can be', () => {
    expect(boundTexts(PLAN, FRAME)).toEqual([
      'No plan finishes before Mon Nov 30, 11:30 am; this one ends 1 h 30 min later on the clock, nights counted.',
    ]);
    expect(boundTexts(LATE, FRAME)).toEqual([
      '3 h late in all; no plan is less than 2 h 30 min late.',
      'No plan finishes sooner than this one.',
    ]);
  });

  test('names the bottleneck and what one more of something is worth', () => {
    expect(bottleneckText(PLAN)).toBe(
      'Flat plate is the bottleneck: taken for 84 % of the time that decides when the last order is packed.',
    );
    expect(bottleneckText({ ...PLAN, loads: [] })).toBe('Nothing is short.');
    const more = {
      kind: 'plate',
      name: 'Griddle',
      count: 1,
      lateness: 0,
      finish: 0,
      alsoPlanned: [],
    } as const;
    expect(oneMoreText(more)).toBe('One more plate Griddle saves nothing.');
    expect(oneMoreText({ ...more, kind: 'person', name: 'Ben', lateness: HOUR, finish: 600 })).toBe(
      'One more person like Ben saves 1 h of being late and finishes 10 min sooner.',
    );
    expect(oneMoreText({ ...more, alsoPlanned: ['2104'] })).toBe(
      'One more plate Griddle makes room for 2104.',
    );
    expect(oneMoreText({ ...more, kind: 'mold', name: 'Stick', count: 2, finish: 600 })).toBe(
      '2 more molds Stick finish 10 min sooner.',
    );
  });

  test('says of each order when it is packed and whether that is in time', () => {
    const said = [...PLAN.orders, ...LATE.orders].map((order) => orderOutcomeText(order, FRAME));
    expect(said).toEqual([
      'packed Mon Nov 30, 12:00 pm, in time',
      'packed Mon Nov 30, 1:00 pm, no due date',
      'packed Mon Nov 30, 8:00 pm, 3 h late',
    ]);
  });

  test('each plate has its orders in the sequence of their rounds', () => {
    expect(plateSequences(PLAN)).toEqual([
      ['Flat plate', '2101 (2 rounds), 2102 (1 round), 2101 (1 round)'],
      ['Griddle', '2103 (1 round)'],
    ]);
  });

  test('after a replan it says who suffers, which windows were missed and what was assumed', () => {
    const replanned: Replanned = { ...PLAN, suffers: [], brokenWindows: [], assumed: [] };
    expect(replanTexts(replanned)).toEqual(['No due date suffers.']);
    expect(
      replanTexts({
        ...replanned,
        suffers: [
          { order: '2101', late: 2400, wasLate: 0 },
          { order: '2102', late: 3600, wasLate: 600 },
        ],
        brokenWindows: [{ before: '2101 pour belly', after: '2101 pour back', late: 90 }],
        assumed: ['2101 lay out'],
      }),
    ).toEqual([
      'Order 2101 is 40 min late; it was in time before.',
      'Order 2102 is 1 h late; it was 10 min late before.',
      '2101 pour back comes 2 min past its latest moment after 2101 pour belly: tear-test those pieces before packing.',
      '1 task without a tick taken as done, since what follows was ticked.',
    ]);
  });
});
