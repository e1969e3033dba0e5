import { DAY_RULES } from '../../../shared/book/settings/dayRules.ts';
import type { PlannedRun } from '../../../shared/day/planning/plannedRun.ts';
import type { DayOrder, ShopDay } from '../../../shared/day/planning/shopDay.ts';
import { weekHours } from '../../../shared/day/planning/weekHours.ts';

export const HOUR = 3600;
export const DAY = 24 * HOUR;

/** An invented shop of three, two weeks of weekdays from eight to five. */
export function demoDay(changes: Partial<ShopDay> = {}): ShopDay {
  const lunch = (from: number) => ({
    from: 8 * HOUR,
    to: 17 * HOUR,
    breaks: [{ from: from * HOUR, to: (from + 1) * HOUR }],
  });
  const week = (from: number) => {
    const shift = lunch(from);
    return weekHours([shift, shift, shift, shift, shift, undefined, undefined], 14);
  };
  return {
    people: [
      { name: 'Ada', skills: ['color', 'cook', 'pour', 'finish'], hours: week(12) },
      { name: 'Ben', skills: ['cook', 'pour', 'finish'], hours: week(13) },
      { name: 'Cleo', skills: ['finish', 'color'], hours: week(12) },
    ],
    plates: [
      {
        name: 'Long griddle',
        area: 0.13,
        rounds: 'one',
        plug: { watts: 1500, circuit: 'Bench' },
      },
      { name: 'Flat plate', area: 0.09, rounds: 'one', plug: { watts: 1200, circuit: 'Wall' } },
    ],
    molds: [
      { name: 'Ribbed 4 in', owned: 2, footprint: 0.025 },
      { name: 'Paddle 3 in', owned: 2, footprint: 0.012 },
      { name: 'Grub 2 in', owned: 1, footprint: 0.02 },
    ],
    ovens: [{ name: 'Oven', plug: { watts: 1500, circuit: 'Wall 2' } }],
    circuits: [
      { name: 'Bench', watts: 1800 },
      { name: 'Wall', watts: 1800 },
      { name: 'Wall 2', watts: 1800 },
    ],
    cups: 12,
    rules: DAY_RULES,
    ...changes,
  };
}

/** A run of two layers, 40 pieces in rounds of 16, unless a test says otherwise. */
export function demoRun(order: string, changes: Partial<PlannedRun> = {}): PlannedRun {
  return {
    order,
    mold: 'Ribbed 4 in',
    moldsInUse: 1,
    pattern: 'Creek minnow',
    version: 2,
    pieces: { toPour: 40, rounds: 3, perRound: 16 },
    layers: [
      { layer: 'belly', cups: 2, run: { firstAt: 0, passTime: 128 } },
      {
        layer: 'back',
        cups: 3,
        run: { firstAt: 150.5, passTime: 128, wait: { shortest: 150.5, longest: 160.5 } },
        window: { kind: 'between', earliest: 90, latest: 400 },
      },
    ],
    plate: { kind: 'reachable', plate: 'Long griddle', heatUp: 1830.2, readyWait: 300 },
    cookTime: 130,
    cookBursts: 5,
    coolTime: 2400,
    work: { setUp: 1200, coloring: 1200, heating: 400, pouring: 640, finishing: 1000 },
    ...changes,
  };
}

const MOLDS = ['Ribbed 4 in', 'Paddle 3 in', 'Grub 2 in'] as const;

/** Orders of a week, made by arithmetic: molds, patterns, sizes and due dates take turns. */
export function weekOrders(count: number, days: number): readonly DayOrder[] {
  return Array.from({ length: count }, (_, place) => {
    const rounds = 1 + (place % 3);
    const run = demoRun(String(2100 + place), {
      mold: MOLDS[place % 3] ?? 'Ribbed 4 in',
      pattern: `Pattern ${place % 4}`,
      pieces: { toPour: rounds * 16, rounds, perRound: 16 },
    });
    const plates = ['Long griddle', 'Flat plate'];
    const due = (Math.floor((place * days) / count) + 1) * DAY - 7 * HOUR;
    return { run, due, plates };
  });
}
