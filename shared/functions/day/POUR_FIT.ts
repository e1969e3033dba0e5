import { fitRuns, type RunFit } from '../../day/fitRuns.ts';
import { defineSpill } from '../defineSpill.ts';
import { POSITIVE } from '../positive.ts';

/** A list in a cell has to answer at once. */
const MOST_RUNS = 60;

export const POUR_FIT = defineSpill({
  name: 'POUR_FIT',
  family: 'day',
  about: 'Whether runs fit into the hours of some days, and where each goes.',
  params: {
    runTimes: {
      kind: 'list',
      item: 'run time',
      measure: 'minutes',
      about: 'How long each run takes, done in one go.',
      bounds: POSITIVE,
      most: MOST_RUNS,
    },
    dueDays: {
      kind: 'list',
      item: 'due day',
      about: 'Day by whose end each must be done, 1 for the first.',
      bounds: { atLeast: 1, atMost: 366, whole: true },
      matches: { list: 'runTimes' },
      oneForAll: true,
    },
    hours: {
      kind: 'number',
      measure: 'hours',
      about: 'Worked each day.',
      bounds: { greaterThan: 0, atMost: 86_400 },
      default: 28_800,
    },
    days: {
      kind: 'number',
      about: 'Days on which there is work.',
      bounds: { atLeast: 1, atMost: 60, whole: true },
      default: 5,
    },
    atOnce: {
      kind: 'number',
      about:
        'Runs that can go on at the same time: plates, pourers or sets of molds, whichever is fewer.',
      bounds: { atLeast: 1, atMost: 20, whole: true },
      default: 1,
    },
  },
  returns: [
    { name: 'verdict', about: 'In time, late, or no room', kind: 'text' },
    { name: 'day', about: 'Day on which it goes, 1 for the first', kind: 'number' },
    {
      name: 'start',
      about: 'From the start of that day’s hours',
      kind: 'number',
      measure: 'minutes',
    },
    { name: 'days late', about: 'Past its due day', kind: 'number' },
  ],
  examples: [
    {
      args: [[240, 300, 180], [1, 2, 1], 8, 2],
      result: [
        ['in time', 1, 0, 0],
        ['in time', 2, 0, 0],
        ['in time', 1, 240, 0],
      ],
      source: '240 + 180 of 480 minutes on the first day, by hand',
    },
    {
      args: [[240, 300, 600], 1, 8, 2],
      result: [
        ['late', 2, 0, 1],
        ['in time', 1, 0, 0],
        ['no room', '', '', ''],
      ],
      source:
        '600 minutes are more than 8 hours, 240 + 300 too; the shorter is over sooner on the second day, by hand',
    },
  ],
  notes:
    'As little late in all as found, then done as soon as found. A run that has no room is left out, the last due first, of those the longest. For hands, plates, molds and windows between layers plan a pour day in the panel.',
  compute: ({ runTimes, dueDays, hours, days, atOnce }) =>
    fitRuns({
      times: runTimes,
      dueDays: spread(dueDays, runTimes.length),
      hours,
      days,
      atOnce,
    }).map(rowOf),
});

function spread(days: readonly number[], count: number): readonly number[] {
  const [first = 1] = days;
  return days.length === 1 ? new Array<number>(count).fill(first) : days;
}

function rowOf(fit: RunFit) {
  if (fit.kind === 'no room') return ['no room', '', '', ''];
  return [fit.daysLate === 0 ? 'in time' : 'late', fit.day, fit.start, fit.daysLate];
}
