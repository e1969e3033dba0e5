import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planSchedule } from '../../shared/schedule/planSchedule.ts';
import type { Mode, SchedulingProblem } from '../../shared/schedule/schedulingTypes.ts';
import { broken } from './broken.ts';

const COUNT = 9;

/** Three places of different size, two of them with hours; people in two pairs. */
const anyResources = fc
  .record({
    sizes: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 4, maxLength: 4 }),
    shift: fc.integer({ min: 6, max: 20 }),
    pause: fc.integer({ min: 1, max: 8 }),
  })
  .map(({ sizes, shift, pause }) => {
    const open = Array.from({ length: 40 }, (_, day) => ({
      from: day * (shift + pause),
      to: day * (shift + pause) + shift,
    }));
    return sizes.map((capacity, place) => ({
      id: `R${place}`,
      capacity,
      ...(place % 2 === 1 && { open }),
    }));
  });

const anyDraw = fc.record({
  duration: fc.integer({ min: 0, max: 5 }),
  amount: fc.integer({ min: 1, max: 3 }),
  place: fc.nat(3),
  other: fc.nat(3),
  isEither: fc.boolean(),
  isBoth: fc.boolean(),
  release: fc.nat(10),
  due: fc.option(fc.integer({ min: 5, max: 40 }), { nil: undefined }),
  weight: fc.integer({ min: 1, max: 3 }),
});

const anyLink = fc.record({
  before: fc.nat(COUNT - 2),
  ahead: fc.integer({ min: 1, max: 3 }),
  least: fc.nat(3),
  slack: fc.option(fc.nat(6), { nil: undefined }),
  from: fc.constantFrom('start', 'finish'),
  isTogether: fc.boolean(),
});

const anyHold = fc.record({ first: fc.nat(COUNT - 2), ahead: fc.nat(2), place: fc.nat(3) });

const anyShop: fc.Arbitrary<SchedulingProblem> = fc
  .record({
    resources: anyResources,
    draws: fc.array(anyDraw, { minLength: COUNT, maxLength: COUNT }),
    links: fc.array(anyLink, { maxLength: 8 }),
    holds: fc.array(anyHold, { maxLength: 2 }),
  })
  .map(({ resources, draws, links, holds }) => {
    const way = (place: number, amount: number): Mode => [
      { resource: `R${place}`, amount: Math.min(amount, resources[place]?.capacity ?? 1) },
    ];
    return {
      resources,
      tasks: draws.map(({ duration, amount, place, other, isEither, isBoth, ...rest }, task) => {
        const first = way(place, amount);
        const second = way(other, amount);
        const isOther = place !== other;
        const uses =
          isBoth && isOther ? [[first], [second]] : [isEither ? [first, second] : [first]];
        const { due, ...given } = rest;
        return { id: `T${task}`, duration, uses, ...given, ...(due !== undefined && { due }) };
      }),
      links: links.map(({ before, ahead, least, slack, from, isTogether }) => ({
        before: `T${before}`,
        after: `T${Math.min(COUNT - 1, before + ahead)}`,
        from,
        least,
        ...(isTogether && { isTogether }),
        ...(slack !== undefined && { most: least + slack + 5 }),
      })),
      holds: holds.map(({ first, ahead, place }, hold) => ({
        id: `H${hold}`,
        first: `T${first}`,
        last: `T${Math.min(COUNT - 1, first + ahead)}`,
        modes: [way(place, 1), way((place + 1) % 4, 1)],
      })),
    };
  });

describe('any shop', () => {
  test('no resource over its capacity or out of hours, no task too soon, no window broken', () => {
    let planned = 0;
    fc.assert(
      fc.property(anyShop, fc.nat(50), (problem, seed) => {
        const schedule = planSchedule(problem, { iterations: 6, seed });
        fc.pre(schedule.kind === 'schedule');
        planned += 1;
        expect(broken(problem, schedule)).toEqual([]);
        expect(schedule.bound.finish).toBeLessThanOrEqual(schedule.cost.finish);
        expect(schedule.bound.lateness).toBeLessThanOrEqual(schedule.cost.lateness);
      }),
      { numRuns: 1000 },
    );
    expect(planned).toBeGreaterThan(700); // the rest have windows that cannot be kept
  });

  test('the same seed gives the same schedule, more iterations are never worse', () => {
    fc.assert(
      fc.property(anyShop, fc.nat(50), fc.integer({ min: 1, max: 30 }), (problem, seed, few) => {
        const one = planSchedule(problem, { iterations: few, seed });
        expect(planSchedule(problem, { iterations: few, seed })).toEqual(one);
        const more = planSchedule(problem, { iterations: few + 15, seed });
        fc.pre(one.kind === 'schedule');
        if (more.kind !== 'schedule') throw new Error('more iterations lost the schedule');
        const isLater = more.cost.lateness === one.cost.lateness;
        expect(more.cost.lateness).toBeLessThanOrEqual(one.cost.lateness);
        if (isLater) expect(more.cost.finish).toBeLessThanOrEqual(one.cost.finish);
      }),
      { numRuns: 150 },
    );
  });
});
