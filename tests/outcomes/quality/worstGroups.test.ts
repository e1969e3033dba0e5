import { describe, expect, test } from 'vitest';
import type { LoggedRound } from '../../../shared/outcomes/quality/loggedRounds.ts';
import { worstGroups } from '../../../shared/outcomes/quality/worstGroups.ts';
import { roundsOf } from '../rounds.ts';

const UNKNOWN = () => undefined;

function namesOf(rounds: readonly LoggedRound[], layersOf: Parameters<typeof worstGroups>[1]) {
  return worstGroups(rounds, layersOf).map(({ kind, name }) => `${kind} ${name}`);
}

const kinds = (mold: string, poured: number, good: number) => ({ mold, poured, good });

describe('worstGroups', () => {
  test('30 of 40 beside 59 of 60 is worse for sure, with its Wilson interval by hand', () => {
    const rounds = roundsOf(kinds('Worm', 25, 20), kinds('Stick', 60, 59), kinds('worm ', 15, 10));
    const [worst, ...others] = worstGroups(rounds, UNKNOWN);
    expect(others).toEqual([]);
    const z2 = 1.959963984540054 ** 2;
    const center = (0.75 + z2 / 80) / (1 + z2 / 40);
    const half = Math.sqrt(z2 * ((0.75 * 0.25) / 40 + z2 / 6400)) / (1 + z2 / 40);
    expect(worst).toEqual({
      ...{ kind: 'mold', name: 'Worm', rounds: 2, poured: 40, good: 30, others: 59 / 60 },
      low: expect.toBeNear(center - half, { relative: 1e-9 }), // digits of the normal quantile
      high: expect.toBeNear(center + half, { relative: 1e-9 }),
    });
  });

  test('a mold that luck may have made worse is not named', () => {
    // 8 of 10 may well be a mold of 94 %, 54 of 60 a mold of 93 %
    expect(namesOf(roundsOf(kinds('Worm', 10, 8), kinds('Stick', 60, 54)), UNKNOWN)).toEqual([]);
  });

  test('60 of 100 come before 1 of 4: a few pieces do not make a mold the worst', () => {
    const rounds = roundsOf(kinds('Frog', 4, 1), kinds('Worm', 100, 60), kinds('Stick', 400, 396));
    expect(namesOf(rounds, UNKNOWN)).toEqual(['mold Worm', 'mold Frog']);
  });

  test('molds, patterns and layer counts stand in one list of three at most', () => {
    const bad = (of: Partial<LoggedRound>, good: number) => ({ poured: 100, good, ...of });
    const rounds = roundsOf(
      bad({ mold: 'Worm', pattern: 'Vein' }, 50),
      bad({ mold: 'Frog', pattern: 'Spot' }, 60),
      { poured: 1000, good: 990 },
    );
    const layers = ({ pattern }: LoggedRound) => ({ Vein: 3, Line: 1 })[pattern];
    expect(namesOf(rounds, layers)).toEqual(['mold Worm', 'pattern Vein', 'layers 3 layers']);
  });

  test('rounds of a pattern whose layers are unknown stand on neither side of the layer counts', () => {
    const rounds = roundsOf(
      { pattern: 'Vein', poured: 100, good: 50 },
      { pattern: 'Spot', poured: 100, good: 0 },
      { pattern: 'Line', poured: 100, good: 99 },
    );
    const layers = ({ pattern }: LoggedRound) => ({ Vein: 2, Line: 1 })[pattern];
    const found = worstGroups(rounds, layers).find(({ kind }) => kind === 'layers');
    expect(found).toMatchObject({ name: '2 layers', good: 50, others: 0.99 });
  });

  test.each([
    { of: 'no round', rounds: [] },
    { of: 'one round, all of it bad', rounds: roundsOf({ good: 0 }) },
    { of: 'one mold, nothing to hold it against', rounds: roundsOf({ good: 0 }, { good: 9 }) },
  ])('$of: none', ({ rounds }) => {
    expect(worstGroups(rounds, () => 2)).toEqual([]);
  });
});
