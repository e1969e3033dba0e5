import type { LoggedRound } from '../../shared/outcomes/quality/loggedRounds.ts';

/** Rounds as the log gives them, frozen: what is left out is a sound round of one mold, each a run of its own. */
export function roundsOf(...changes: readonly Partial<LoggedRound>[]): readonly LoggedRound[] {
  const rounds = changes.map((change, index): LoggedRound => {
    const run = change.run ?? `R-${index + 1}`;
    return Object.freeze({
      ...{ row: index + 2, run, label: `${run} round 1`, mold: 'Stick', pattern: 'Line' },
      ...{ poured: 10, good: 10, defects: {}, weights: [] },
      ...change,
    });
  });
  return Object.freeze(rounds);
}
