import { describe, expect, test } from 'vitest';
import { chartSamples } from '../../../shared/outcomes/quality/chartSamples.ts';
import { loggedRounds } from '../../../shared/outcomes/quality/loggedRounds.ts';
import { logBook } from '../../log/logBook.ts';
import { roundsOf } from '../rounds.ts';

describe('chartSamples', () => {
  const rounds = roundsOf(
    { run: 'R-1', label: 'R-1 round 1', poured: 16, good: 15 },
    { run: 'R-2', label: 'R-2 round 1', poured: 8, good: 8 },
    { run: 'r-1 ', label: 'r-1 round 2', poured: 12, good: 9 },
  );

  test('one point for each round, in the order of the log', () => {
    expect(chartSamples(rounds, 'rounds')).toEqual([
      { label: 'R-1 round 1', poured: 16, bad: 1 },
      { label: 'R-2 round 1', poured: 8, bad: 0 },
      { label: 'r-1 round 2', poured: 12, bad: 3 },
    ]);
  });

  test('one point for each run, its rounds together where its first stands, whatever its case', () => {
    expect(chartSamples(rounds, 'runs')).toEqual([
      { label: 'R-1', poured: 28, bad: 4 },
      { label: 'R-2', poured: 8, bad: 0 },
    ]);
  });

  test('rounds of one name are points of their own', () => {
    const twice = roundsOf({ label: 'R-1 round 1' }, { label: 'R-1 round 1', good: 5 });
    expect(chartSamples(twice, 'rounds').map(({ bad }) => bad)).toEqual([0, 5]);
  });

  test('no round, no point', () => {
    for (const points of ['rounds', 'runs'] as const) expect(chartSamples([], points)).toEqual([]);
  });

  test('a corrected row counts once, in rounds and in runs', () => {
    const row = { run: 'R-1', order: '1', mold: 'Stick', pattern: 'Line', poured: 10, good: 1 };
    const log = [
      { ...row, entry: 'e1', round: 1 },
      { ...row, entry: 'e2', corrects: 'e1', round: 1, good: 8 },
    ];
    const counted = loggedRounds(logBook({ pourLog: log }));
    expect(chartSamples(counted, 'rounds')).toEqual([{ label: 'R-1 round 1', poured: 10, bad: 2 }]);
    expect(chartSamples(counted, 'runs')).toEqual([{ label: 'R-1', poured: 10, bad: 2 }]);
  });
});
