import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  YIELD_BY,
  type YieldBy,
  yieldGroups,
} from '../../../shared/outcomes/yields/yieldGroups.ts';
import { logBook } from '../../log/logBook.ts';
import { HOSTILE } from '../../paper/hostile.ts';

type LogRow = Readonly<Record<string, string | number>>;

const SOUND = { run: 'R-1', order: '1', mold: 'Stick', pattern: 'Line', poured: 10, good: 9 };

function groups(by: YieldBy, rows: readonly LogRow[], system: 'US' | 'metric' = 'US') {
  const { pourLog } = logBook({ pourLog: rows.map((row) => ({ ...SOUND, ...row })) });
  return yieldGroups(Object.freeze(pourLog), by, system);
}

/** Each group with its rounds, poured and good pieces. */
function lines(by: YieldBy, rows: readonly LogRow[], system: 'US' | 'metric' = 'US') {
  return groups(by, rows, system).groups.map(({ group, rounds, poured, good }) => [
    group,
    rounds,
    poured,
    good,
  ]);
}

describe('yieldGroups', () => {
  test('by mold adds rounds, poured and good; names stand by their letters, in the case first written', () => {
    const rows = [{ mold: 'Worm', good: 5 }, {}, { mold: 'worm', poured: 16, good: 12 }];
    expect(lines('mold', rows)).toEqual([
      ['Stick', 1, 10, 9],
      ['Worm', 2, 26, 17],
    ]);
  });

  test('by pattern, by mold and pattern, and by person', () => {
    const rows = [
      { pattern: 'Vein', who: 'AK' },
      { mold: 'Worm', who: 'BT', good: 8 },
      { pattern: 'Vein', mold: 'Worm', who: 'ak', good: 7 },
    ];
    expect(lines('pattern', rows)).toEqual([
      ['Line', 1, 10, 8],
      ['Vein', 2, 20, 16],
    ]);
    expect(lines('mold and pattern', rows)).toEqual([
      ['Stick, Vein', 1, 10, 9],
      ['Worm, Line', 1, 10, 8],
      ['Worm, Vein', 1, 10, 7],
    ]);
    expect(lines('person', rows)).toEqual([
      ['AK', 2, 20, 16],
      ['BT', 1, 10, 8],
    ]);
  });

  test('by layers takes the highest with a pour or a gap before it, upward', () => {
    const rows = [{}, { pour1: 330, pour3: 331 }, { pour1: 330 }, { gap12: 0.5 }, { pour2: 330 }];
    expect(lines('layers', rows)).toEqual([
      ['1', 1, 10, 9],
      ['2', 2, 20, 18],
      ['3', 1, 10, 9],
      ['', 1, 10, 9],
    ]);
  });

  test('by mold top takes bands of 20 °F, the lower end included, upward', () => {
    const rows = [{ moldTop: 220 }, { moldTop: 219 }, {}, { moldTop: 80 }, { moldTop: 200 }];
    expect(lines('mold top', rows)).toEqual([
      ['80 to 100 °F', 1, 10, 9],
      ['200 to 220 °F', 2, 20, 18],
      ['220 to 240 °F', 1, 10, 9],
      ['', 1, 10, 9],
    ]);
  });

  test('in metric units the bands are 10 °C wide', () => {
    // 212 and 228 °F are 100 and 108.9 °C, 230 °F is 110 °C
    expect(
      lines('mold top', [{ moldTop: 212 }, { moldTop: 228 }, { moldTop: 230 }], 'metric'),
    ).toEqual([
      ['100 to 110 °C', 2, 20, 18],
      ['110 to 120 °C', 1, 10, 9],
    ]);
  });

  test('every whole degree that a person types falls into the band that begins at or below it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 570 }), (moldTop) => {
        const from = moldTop - (moldTop % 20);
        expect(lines('mold top', [{ moldTop }])[0]?.[0]).toBe(`${from} to ${from + 20} °F`);
      }),
      { numRuns: 100 },
    );
  });

  test('160 °F kept as 71.1111111111111 °C, a binary digit short, stays in the band from 160 °F', () => {
    const { pourLog } = logBook({ pourLog: [SOUND] });
    const short = pourLog.map(({ row, record }) => ({
      row,
      record: { ...record, moldTop: 71.1111111111111 },
    }));
    const [band] = yieldGroups(short, 'mold top', 'US').groups;
    expect(band?.group).toBe('160 to 180 °F');
  });

  test('by month takes year and month of the day logged, over the end of a year', () => {
    const rows = [
      { loggedAt: '2027-01-01 08:00' },
      { loggedAt: '2026-12-31 16:00' },
      { loggedAt: '2026-12-01' },
      { loggedAt: 'in spring' },
    ];
    expect(lines('month', rows)).toEqual([
      ['2026-12', 2, 20, 18],
      ['2027-01', 1, 10, 9],
      ['', 1, 10, 9],
    ]);
  });

  test('a corrected row does not count: its correction does, in its own group and its own month', () => {
    const rows = [
      { entry: 'e1', loggedAt: '2026-11-30 17:00', good: 2 },
      { entry: 'e2', corrects: 'e1', loggedAt: '2026-12-01 08:00', mold: 'Worm', good: 7 },
    ];
    expect(lines('mold', rows)).toEqual([['Worm', 1, 10, 7]]);
    expect(lines('month', rows)).toEqual([['2026-11', 1, 10, 7]]);
  });

  test('rows without a count and with more good than poured are left out and named', () => {
    const found = groups('mold', [{ good: '' }, {}, { poured: '' }, { good: 11 }]);
    expect(found).toEqual({
      groups: [{ group: 'Stick', rounds: 1, poured: 10, good: 9 }],
      leftOut: [2, 4, 5],
    });
  });

  test.each(YIELD_BY)('an empty log has no group by %s', (by) => {
    expect(groups(by, [])).toEqual({ groups: [], leftOut: [] });
  });

  test.each(HOSTILE)('the name %j is a group as it stands', (name) => {
    expect(lines('mold', [{ mold: name }, { mold: name }])).toEqual([[name.trim(), 2, 20, 18]]);
  });

  test('no pieces are lost or counted twice, whatever the rounds are sorted by', () => {
    const row = fc
      .record({
        mold: fc.constantFrom('', 'A', 'a', 'B'),
        moldTop: fc.constantFrom('', 200, 219.9, 220),
        pour2: fc.constantFrom('', 330),
        poured: fc.constantFrom('', 4, 10),
        good: fc.constantFrom('', 0, 4, 6),
      })
      .map((drawn): LogRow => drawn);
    fc.assert(
      fc.property(fc.array(row, { maxLength: 8 }), fc.constantFrom(...YIELD_BY), (rows, by) => {
        const { groups: found, leftOut } = groups(by, rows);
        const sound = rows.filter(
          ({ poured, good }) => poured !== '' && good !== '' && Number(good) <= Number(poured),
        );
        const sum = (key: 'rounds' | 'poured' | 'good') =>
          found.reduce((all, group) => all + group[key], 0);
        expect(sum('rounds')).toBe(sound.length);
        expect(sum('rounds') + leftOut.length).toBe(rows.length);
        for (const key of ['poured', 'good'] as const)
          expect(sum(key)).toBe(sound.reduce((all, one) => all + Number(one[key]), 0));
      }),
      { numRuns: 100 },
    );
  });
});
