import { describe, expect, test } from 'vitest';
import { inScope, loggedRounds, namesOf } from '../../../shared/outcomes/quality/loggedRounds.ts';
import { logBook } from '../../log/logBook.ts';

const SOUND = { run: 'R-1', order: '1', mold: 'Stick', pattern: 'Line', poured: 10, good: 9 };

function roundsOf(...rows: readonly Readonly<Record<string, string | number>>[]) {
  return loggedRounds(logBook({ pourLog: rows }));
}

describe('loggedRounds', () => {
  test('a round carries its day, mold top in °C, weights in kg and only the defects that came', () => {
    const row = { ...SOUND, round: 2, version: 3, loggedAt: '2026-11-24 12:54', moldTop: 212 };
    expect(roundsOf({ ...row, dimple: 1, flash: 0, weights: '10, 11 g', pieceWeight: 2 })).toEqual([
      {
        ...{ row: 2, run: 'R-1', label: 'R-1 round 2', day: '2026-11-24' },
        ...{ mold: 'Stick', pattern: 'Line', version: 3, poured: 10, good: 9 },
        moldTop: expect.toBeNear(100, { absolute: 1e-9 }), // binary digits of the conversion
        defects: { dimple: 1 },
        weights: [
          expect.toBeNear(0.01, { relative: 1e-12 }), // the same
          expect.toBeNear(0.011, { relative: 1e-12 }),
        ],
      },
    ]);
  });

  test('a corrected row gives its place and its day to its last correction and does not count', () => {
    const first = { ...SOUND, entry: 'e1', loggedAt: '2026-11-23 09:00', round: 1 };
    const next = { ...SOUND, run: 'R-2', entry: 'e2', loggedAt: '2026-11-24 09:00', round: 1 };
    const wrong = { ...first, entry: 'e3', corrects: 'e1', loggedAt: '2026-12-01 09:00', good: 4 };
    const right = { ...wrong, entry: 'e4', good: 5 };
    const counted = roundsOf(first, next, wrong, right).map(({ row, day, good }) => [
      row,
      day,
      good,
    ]);
    expect(counted).toEqual([
      [5, '2026-11-23', 5],
      [3, '2026-11-24', 9],
    ]);
  });

  test('rows without run, mold, pattern or a count, and with more good than poured, are left out', () => {
    const blanks = ['run', 'mold', 'pattern', 'poured', 'good'].map((key) => ({
      ...SOUND,
      [key]: '',
    }));
    expect(roundsOf(...blanks, { ...SOUND, good: 11 })).toEqual([]);
  });

  test('without a round it is named by its row, without a date it has no day', () => {
    const [round] = roundsOf({ ...SOUND, loggedAt: 'last week' });
    expect(round?.label).toBe('R-1 row 2');
    expect(round).not.toHaveProperty('day');
  });
});

describe('names', () => {
  const rounds = roundsOf(
    SOUND,
    { ...SOUND, mold: ' STICK ', pattern: 'Vein' },
    { ...SOUND, mold: 'Worm' },
  );

  test('each stands once, as it was first written, whatever its case', () => {
    expect(namesOf(rounds, 'mold')).toEqual(['Stick', 'Worm']);
  });

  test('a blank scope takes everything, mold and pattern together what has both', () => {
    const rowsOf = (scope: Parameters<typeof inScope>[1]) =>
      inScope(rounds, scope).map(({ row }) => row);
    expect(rowsOf({ mold: ' ' })).toEqual([2, 3, 4]);
    expect(rowsOf({ mold: 'stick' })).toEqual([2, 3]);
    expect(rowsOf({ mold: 'stick', pattern: 'LINE' })).toEqual([2]);
    expect(rowsOf({ mold: 'Frog' })).toEqual([]);
  });
});
