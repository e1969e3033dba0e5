import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { activityNetwork } from '../../shared/schedule/activityNetwork.ts';
import { headsAndTails } from '../../shared/schedule/headsAndTails.ts';
import { oneMachineBound } from '../../shared/schedule/oneMachineBound.ts';
import { planSchedule } from '../../shared/schedule/planSchedule.ts';
import type { SchedulingProblem } from '../../shared/schedule/schedulingTypes.ts';
import { taskGroups } from '../../shared/schedule/taskGroups.ts';
import { broken } from './broken.ts';
import {
  COURSE_PROJECT,
  FT06,
  J301_1,
  JOHNSON,
  LA01,
  SEVEN_ACTIVITIES,
  THREE_BY_THREE,
} from './instances.ts';

interface Row {
  readonly name: string;
  readonly problem: SchedulingProblem;
  readonly best: number;
  readonly within: number;
  /** What no schedule beats, as stated by the planner */
  readonly bound: number;
  readonly iterations: number;
  readonly source: string;
}

describe('instances with a known best', () => {
  test.each<Row>([
    {
      name: 'ft06, six jobs on six machines',
      problem: FT06,
      best: 55,
      within: 0.02,
      bound: 52,
      iterations: 2000,
      source: 'FISHERTHOMPSON1963',
    },
    {
      name: 'la01, ten jobs on five machines',
      problem: LA01,
      best: 666,
      within: 0.02,
      bound: 666,
      iterations: 2000,
      source: 'LAWRENCE1984',
    },
    {
      name: 'j301_1, 30 tasks on four resources',
      problem: J301_1,
      best: 43,
      within: 0.05,
      bound: 38,
      iterations: 1000,
      source: 'PSPLIB',
    },
    {
      name: 'three jobs on three machines',
      problem: THREE_BY_THREE,
      best: 11,
      within: 0,
      bound: 10,
      iterations: 200,
      source: 'JOBSHOPMANUAL',
    },
    {
      name: 'five jobs through two machines',
      problem: JOHNSON,
      best: 35,
      within: 0,
      bound: 35,
      iterations: 200,
      source: 'HEIZERRENDER',
    },
    {
      name: 'project of 14 activities',
      problem: COURSE_PROJECT,
      best: 41,
      within: 0,
      bound: 41,
      iterations: 1,
      source: 'CPMCOURSE',
    },
    {
      name: 'project of 7 activities',
      problem: SEVEN_ACTIVITIES,
      best: 16,
      within: 0,
      bound: 16,
      iterations: 1,
      source: 'CPMEXAMPLE',
    },
  ])(
    '$name comes out at $best, as documented',
    ({ name, problem, best, within, bound, iterations }) => {
      for (const seed of [1, 2]) {
        const schedule = planSchedule(problem, { iterations, seed });
        if (schedule.kind !== 'schedule') throw new Error(schedule.because);
        expect(broken(problem, schedule)).toEqual([]);
        expect(schedule.cost.finish).toBeGreaterThanOrEqual(best); // it is the best there is
        expect(schedule.cost.finish).toBeLessThanOrEqual(best * (1 + within));
        expect(schedule.bound.finish).toBe(bound);
        expect(schedule.iterations).toBeLessThanOrEqual(iterations);
        const cells = [best, schedule.cost.finish, bound, iterations].map(String);
        expect(documented(name)).toEqual(cells);
      }
    },
  );
});

/** Best, reached, bound and schedules of an instance in the docs. */
function documented(name: string): readonly string[] | undefined {
  const lines = readFileSync('docs/pour-day.md', 'utf8').split('\n');
  const line = lines.find((one) => one.startsWith(`| ${name} |`));
  return line
    ?.split('|')
    .slice(3, 7)
    .map((cell) => cell.trim());
}

describe('critical path', () => {
  test.each([
    {
      problem: COURSE_PROJECT,
      finish: 41,
      floats: {
        A: 0,
        B: 0,
        C: 11,
        D: 2,
        E: 6,
        F: 0,
        G: 2,
        H: 3,
        I: 0,
        J: 2,
        K: 0,
        L: 0,
        M: 3,
        N: 0,
      },
      source: 'CPMCOURSE',
    },
    {
      problem: SEVEN_ACTIVITIES,
      finish: 16,
      floats: { A: 0, B: 0, C: 1, D: 0, F: 1, E: 0, G: 0 },
      source: 'CPMEXAMPLE',
    },
  ])('$source: float of every activity', ({ problem, finish, floats }) => {
    const network = activityNetwork(problem);
    const { heads, tails } = headsAndTails(network, taskGroups(network, 'apart'));
    const found = problem.tasks.map(({ id, duration }, task) => [
      id,
      finish - (heads[task] ?? 0) - duration - (tails[task] ?? 0),
    ]);
    expect(Object.fromEntries(found)).toEqual(floats);
  });
});

test('one machine, by hand: the longest tail goes first and gives way to a longer one', () => {
  // 0-2 the first, interrupted by the second until 5, the rest of the first until 9, its tail until 10.
  const visits = [
    { head: 0, duration: 6, tail: 1 },
    { head: 2, duration: 3, tail: 7 },
  ];
  expect(oneMachineBound(visits)).toBe(12); // the second is over at 5 + 7
  expect(oneMachineBound([])).toBe(0);
  expect(oneMachineBound([{ head: 4, duration: 2, tail: 3 }])).toBe(9);
});
