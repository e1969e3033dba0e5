import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findTrials, noMissingCells } from '../../shared/trials/findTrials.ts';
import { adoptionKey, nextEntry, readJournal } from '../../shared/trials/readJournal.ts';
import { BENCH, trialBookOf } from './trialCells.ts';

const ROW = {
  entry: 'M-1',
  date: '2026-11-02',
  change: 'put in use',
  figure: 'contact conductance',
  of: 'Griddle',
  trials: 'T-1',
  before: 100,
  after: 85,
  unit: 'W/m²·K',
} as const;

type JournalRow = Readonly<Record<string, string | number>>;

function stackOf(
  rows: readonly JournalRow[],
  figure: 'contact' | 'setTemperature' = 'contact',
  of = 'Griddle',
) {
  const book = trialBookOf({ measuredFigures: rows });
  const gaps = noMissingCells(book);
  return { stack: readJournal(book, gaps).get(adoptionKey(figure, of)) ?? [], gaps };
}

describe('readJournal', () => {
  test('rows of one entry are one change, names in any case', () => {
    const rows = [
      ROW,
      { ...ROW, figure: 'contact error', before: '', after: 3 },
      { ...ROW, entry: 'M-2', of: 'GRIDDLE ', before: 85, after: 90 },
    ];
    const { stack } = stackOf(rows);
    expect(stack.map(({ entry, changes }) => [entry, changes])).toEqual([
      [
        'M-1',
        [
          { name: 'contact conductance', before: 100, after: 85 },
          { name: 'contact error', after: 3 },
        ],
      ],
      ['M-2', [{ name: 'contact conductance', before: 85, after: 90 }]],
    ]);
    expect(stack[0]).toMatchObject({ of: 'Griddle', trials: 'T-1', date: '2026-11-02' });
  });

  test('each number is in the unit of its own row', () => {
    const row = { ...ROW, figure: 'set temperature', of: 'Soft' };
    const rows = [
      { ...row, before: '', after: 202, unit: '°F' },
      { ...row, entry: 'M-2', before: 94, after: 95, unit: '°C' },
    ];
    const { stack } = stackOf(rows, 'setTemperature', 'Soft');
    // 202 °F by hand.
    expect(stack[0]?.changes[0]?.after).toBeNear(94.4444444, { relative: 1e-8 });
    expect(stack[1]?.changes[0]).toMatchObject({ before: 94, after: 95 });
  });

  test('takes back as often as it was put in use, whatever else happened (law)', () => {
    const steps = fc.array(fc.boolean(), { maxLength: 20 });
    fc.assert(
      fc.property(steps, (uses) => {
        let depth = 0;
        const rows = uses.map((isUse, index) => {
          depth = isUse ? depth + 1 : Math.max(0, depth - 1);
          const change = isUse ? 'put in use' : 'taken back';
          return { ...ROW, entry: `M-${index + 1}`, change };
        });
        expect(stackOf(rows).stack).toHaveLength(depth);
      }),
    );
  });

  test('a row that cannot be read is named and left out', () => {
    const { stack, gaps } = stackOf([
      { ...ROW, unit: 'lb' },
      { ...ROW, entry: '' },
    ]);
    expect(stack).toEqual([]);
    expect(gaps.missing).toEqual([
      {
        sheet: 'Measured figures',
        row: 2,
        heading: 'Unit',
        text: 'unit must be a unit of this figure, got "lb"',
      },
      {
        sheet: 'Measured figures',
        row: 3,
        heading: 'Entry',
        text: 'entry must be given, got nothing',
      },
    ]);
  });
});

describe('the way back', () => {
  const griddle = { ...BENCH.plates?.[0], plate: 'Griddle', contactConductance: 85 };

  test('is shown though the trials are gone', () => {
    const book = trialBookOf({ plates: [griddle], measuredFigures: [ROW] });
    expect(findTrials(book).proposals).toEqual([
      {
        figure: 'contact',
        of: 'Griddle',
        present: { value: 85, from: 'own' },
        result: { kind: 'no trials' },
        isInUse: false,
        trials: [],
        pictures: [],
        back: { kind: 'ready', entry: 'M-1', before: 100, trials: 'T-1', date: '2026-11-02' },
      },
    ]);
  });

  test('ends where a cell was changed by hand, and with a plate that is gone', () => {
    const changed = { ...griddle, contactConductance: 86 };
    const book = trialBookOf({ plates: [changed], measuredFigures: [ROW] });
    expect(findTrials(book).proposals[0]?.back).toEqual({ kind: 'changed by hand' });
    expect(findTrials(trialBookOf({ plates: [], measuredFigures: [ROW] })).proposals).toEqual([]);
  });
});

describe('nextEntry', () => {
  test.each([
    { entries: [], next: 'M-1' },
    { entries: ['M-1', 'M-9', 'M-2'], next: 'M-10' },
    { entries: ['mine', '=1+1', 'M-3b'], next: 'M-1' },
  ])('after $entries comes $next', ({ entries, next }) => {
    const rows = entries.map((entry) => ({ ...ROW, entry }));
    expect(nextEntry(trialBookOf({ measuredFigures: rows }).measuredFigures)).toBe(next);
  });
});
