import type { SchedulingProblem } from '../../shared/schedule/schedulingTypes.ts';

/** Rows of a job shop: machine, time pairs in technological order. */
function jobShop(rows: readonly (readonly number[])[]): SchedulingProblem {
  const machines = new Set(rows.flatMap((row) => row.filter((_, place) => place % 2 === 0)));
  const steps = rows.map((row) =>
    Array.from({ length: row.length / 2 }, (_, step) => ({
      machine: row[2 * step] ?? 0,
      duration: row[2 * step + 1] ?? 0,
    })),
  );
  return {
    resources: [...machines].map((machine) => ({ id: `machine ${machine}`, capacity: 1 })),
    tasks: steps.flatMap((job, place) =>
      job.map(({ machine, duration }, step) => ({
        id: `${place}.${step}`,
        duration,
        uses: [[[{ resource: `machine ${machine}`, amount: 1 }]]],
      })),
    ),
    links: steps.flatMap((job, place) =>
      job
        .slice(1)
        .map((_, step) => ({ before: `${place}.${step}`, after: `${place}.${step + 1}` })),
    ),
  };
}

/** A project: name, duration, what it waits for. */
function project(rows: readonly (readonly [string, number, string])[]): SchedulingProblem {
  return {
    resources: [],
    tasks: rows.map(([id, duration]) => ({ id, duration })),
    links: rows.flatMap(([after, , before]) => [...before].map((one) => ({ before: one, after }))),
  };
}

export const FT06 = jobShop([
  [2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6],
  [1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4],
  [2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7],
  [1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9],
  [2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1],
  [1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1],
]);

export const LA01 = jobShop([
  [1, 21, 0, 53, 4, 95, 3, 55, 2, 34],
  [0, 21, 3, 52, 4, 16, 2, 26, 1, 71],
  [3, 39, 4, 98, 1, 42, 2, 31, 0, 12],
  [1, 77, 0, 55, 4, 79, 2, 66, 3, 77],
  [0, 83, 3, 34, 2, 64, 1, 19, 4, 37],
  [1, 54, 2, 43, 4, 79, 0, 92, 3, 62],
  [3, 69, 4, 77, 1, 87, 2, 87, 0, 93],
  [2, 38, 0, 60, 1, 41, 3, 24, 4, 83],
  [3, 17, 1, 49, 4, 25, 0, 44, 2, 98],
  [4, 77, 3, 79, 2, 43, 1, 75, 0, 96],
]);

export const THREE_BY_THREE = jobShop([
  [0, 3, 1, 2, 2, 2],
  [0, 2, 2, 1, 1, 4],
  [1, 4, 2, 3],
]);

export const JOHNSON = jobShop([
  [0, 5, 1, 2],
  [0, 3, 1, 6],
  [0, 8, 1, 4],
  [0, 10, 1, 7],
  [0, 7, 1, 12],
]);

export const COURSE_PROJECT = project([
  ['A', 2, ''],
  ['B', 10, 'A'],
  ['C', 13, 'A'],
  ['D', 12, 'A'],
  ['E', 12, 'B'],
  ['F', 7, 'B'],
  ['G', 10, 'D'],
  ['H', 16, 'D'],
  ['I', 6, 'F'],
  ['J', 12, 'CG'],
  ['K', 5, 'I'],
  ['L', 8, 'EK'],
  ['M', 5, 'H'],
  ['N', 3, 'JLM'],
]);

/** Job, duration, four needs, successors. */
const J301_1_ROWS: readonly (readonly [number, number, number, number, number, number, string])[] =
  [
    [1, 0, 0, 0, 0, 0, '2 3 4'],
    [2, 8, 4, 0, 0, 0, '6 11 15'],
    [3, 4, 10, 0, 0, 0, '7 8 13'],
    [4, 6, 0, 0, 0, 3, '5 9 10'],
    [5, 3, 3, 0, 0, 0, '20'],
    [6, 8, 0, 0, 0, 8, '30'],
    [7, 5, 4, 0, 0, 0, '27'],
    [8, 9, 0, 1, 0, 0, '12 19 27'],
    [9, 2, 6, 0, 0, 0, '14'],
    [10, 7, 0, 0, 0, 1, '16 25'],
    [11, 9, 0, 5, 0, 0, '20 26'],
    [12, 2, 0, 7, 0, 0, '14'],
    [13, 6, 4, 0, 0, 0, '17 18'],
    [14, 3, 0, 8, 0, 0, '17'],
    [15, 9, 3, 0, 0, 0, '25'],
    [16, 10, 0, 0, 0, 5, '21 22'],
    [17, 6, 0, 0, 0, 8, '22'],
    [18, 5, 0, 0, 0, 7, '20 22'],
    [19, 3, 0, 1, 0, 0, '24 29'],
    [20, 7, 0, 10, 0, 0, '23 25'],
    [21, 2, 0, 0, 0, 6, '28'],
    [22, 7, 2, 0, 0, 0, '23'],
    [23, 2, 3, 0, 0, 0, '24'],
    [24, 3, 0, 9, 0, 0, '30'],
    [25, 3, 4, 0, 0, 0, '30'],
    [26, 7, 0, 0, 4, 0, '31'],
    [27, 8, 0, 0, 0, 7, '28'],
    [28, 3, 0, 8, 0, 0, '31'],
    [29, 7, 0, 7, 0, 0, '32'],
    [30, 2, 0, 7, 0, 0, '32'],
    [31, 2, 0, 0, 2, 0, '32'],
    [32, 0, 0, 0, 0, 0, ''],
  ];

export const J301_1: SchedulingProblem = {
  resources: [12, 13, 4, 12].map((capacity, place) => ({ id: `R${place + 1}`, capacity })),
  tasks: J301_1_ROWS.map(([job, duration, ...rest]) => ({
    id: String(job),
    duration,
    uses: [rest[0], rest[1], rest[2], rest[3]].flatMap((amount, place) =>
      amount > 0 ? [[[{ resource: `R${place + 1}`, amount }]]] : [],
    ),
  })),
  links: J301_1_ROWS.flatMap(([job, , , , , , after]) =>
    after
      .split(' ')
      .filter((one) => one !== '')
      .map((one) => ({ before: String(job), after: one })),
  ),
};

export const SEVEN_ACTIVITIES = project([
  ['A', 6, ''],
  ['B', 2, 'A'],
  ['C', 2, 'A'],
  ['D', 3, 'B'],
  ['F', 2, 'C'],
  ['E', 4, 'DF'],
  ['G', 1, 'E'],
]);
