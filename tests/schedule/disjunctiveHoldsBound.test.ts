import { expect, test } from 'vitest';
import { planSchedule } from '../../shared/schedule/planSchedule.ts';
import type { SchedulingProblem } from '../../shared/schedule/schedulingTypes.ts';

const HOURS = [0, 24, 48].map((day) => ({ from: day + 8, to: day + 16 }));

/** Rounds of `set` 1, cool 4, `take out` 1, one mold; people from 8 to 16. */
function rounds(count: number, owned: number): SchedulingProblem {
  const all = Array.from({ length: count }, (_, place) => place);
  const hands = [[[{ resource: 'hands', amount: 1 }]]];
  return {
    resources: [
      { id: 'hands', capacity: 1, open: HOURS },
      { id: 'mold', capacity: owned },
    ],
    tasks: all.flatMap((round) => [
      { id: `set ${round}`, duration: 1, uses: hands },
      { id: `out ${round}`, duration: 1, uses: hands },
    ]),
    links: all.map((round) => ({ before: `set ${round}`, after: `out ${round}`, least: 4 })),
    holds: all.map((round) => ({
      id: `mold ${round}`,
      first: `set ${round}`,
      last: `out ${round}`,
      modes: [[{ resource: 'mold', amount: 1 }]],
    })),
  };
}

test.each([
  // 8 to 14; set at 14, taken out the next morning at 8; then 9 to 15, 15 to 33.
  { count: 1, owned: 1, finish: 14 },
  { count: 2, owned: 1, finish: 33 },
  { count: 3, owned: 1, finish: 39 },
  { count: 4, owned: 1, finish: 57 },
])('$count rounds with one mold cannot end before $finish: nights count', (row) => {
  const found = planSchedule(rounds(row.count, row.owned), { iterations: 30, seed: 1 });
  expect(found).toMatchObject({ kind: 'schedule', bound: { finish: row.finish } });
  expect(found).toMatchObject({ cost: { finish: row.finish } });
});

test('with two molds rounds do not take turns, and the bound is no longer that late', () => {
  const found = planSchedule(rounds(2, 2), { iterations: 30, seed: 1 });
  expect(found).toMatchObject({ kind: 'schedule', bound: { finish: 15 }, cost: { finish: 15 } });
});
