import type { RunFacts } from '../../../shared/day/checklist/taskText.ts';
import type { DayEntry, DayTimetable } from '../../../shared/day/planning/dayTimetable.ts';

const HOUR = 3600;
const DAY = 24 * HOUR;

/** The last cavity waits ten seconds longer than the first. */
const WAIT = { shortest: 150, longest: 160 };

/** Made by hand: one order of two rounds and two layers, the second round on the next day. */
export const FACTS: RunFacts = {
  system: 'US',
  mold: 'Ribbed 4 in',
  moldsInUse: 2,
  pattern: 'Creek minnow',
  version: 2,
  cups: 5,
  plate: {
    kind: 'reachable',
    plate: 'Long griddle',
    setting: 132.2,
    topTarget: 101,
    boilingPoint: 100,
    plateau: 110,
    readyWait: 300,
    heatUp: 1800,
  },
  cookTemperature: 176.7,
  lowestPour: 150,
  demoldTemperature: 43,
  layers: [layer('belly', 0), layer('back', 150, { earliest: 90, latest: 400 })],
};

function layer(
  name: string,
  firstAt: number,
  window?: { readonly earliest: number; readonly latest: number },
): RunFacts['layers'][number] {
  return {
    order: 1,
    layer: name,
    base: 'Soft',
    lot: '',
    share: 0.5,
    fillMark: 0.5,
    cups: 2,
    cupVolume: 2e-4,
    cupMass: 0.2,
    totalMass: 0.4,
    doses: [],
    pourTemperature: 165,
    heatUsed: 0,
    run: { firstAt, lastAt: firstAt + 60, passTime: 64, stops: 0, ...(window && { wait: WAIT }) },
    openTime: { kind: 'stays open' },
    ...(window && { window: { kind: 'between', ...window } }),
  };
}

function entry(
  what: DayEntry['what'],
  from: number,
  minutes: number,
  more: Partial<DayEntry> = {},
): DayEntry {
  const { layer: name, round } = more;
  const words = ['2101', what, ...(name === undefined ? [] : [name])].join(' ');
  const id = round === undefined ? words : `${words}, round ${round}`;
  return { id, order: '2101', what, from, to: from + minutes * 60, ...more };
}

function round(number: number, from: number): readonly DayEntry[] {
  return [
    entry('set on the plate', from, 3, { round: number, person: 'Ada', plate: 'Long griddle' }),
    entry('heat', from + 180, 27, { round: number, plate: 'Long griddle' }),
    entry('cook', from + 1200, 10, { round: number, layer: 'belly', person: 'Ben', oven: 'Oven' }),
    entry('pour', from + 2100, 2, { round: number, layer: 'belly', person: 'Ada' }),
    entry('pour', from + 2250, 2, { round: number, layer: 'back', person: 'Ada' }),
    entry('top off', from + 2400, 1, { round: number, person: 'Ada' }),
    entry('cool', from + 2460, 40, { round: number }),
    entry('demold', from + 4860, 5, { round: number, person: 'Ben' }),
    entry('inspect', from + 5160, 5, { round: number, person: 'Ben' }),
  ];
}

const ENTRIES = [
  entry('lay out', 8 * HOUR, 10, { person: 'Ben' }),
  entry('weigh and color', 8 * HOUR, 20, { person: 'Ada' }),
  entry('wash up', 8 * HOUR + 1200, 10, { person: 'Ada' }),
  ...round(1, 9 * HOUR),
  ...round(2, DAY + 9 * HOUR),
  entry('pack', DAY + 11 * HOUR, 10, { person: 'Ben' }),
  entry('clean', DAY + 11 * HOUR, 10, { person: 'Ada' }),
];

export const DAY_TABLE: Pick<DayTimetable, 'entries' | 'orders'> = {
  entries: ENTRIES,
  orders: [{ order: '2101', finish: DAY + 11 * HOUR + 600, due: DAY + 17 * HOUR, late: 0 }],
};

/** A Monday. */
export const FRAME = { firstDay: '2026-11-30', system: 'US' } as const;
