import { describe, expect, test } from 'vitest';
import { qualitySummary } from '../../../shared/outcomes/quality/qualitySummary.ts';
import type { OverviewDraft } from '../../../shared/paper/overview/addOverviewTable.ts';
import { addQuality } from '../../../shared/paper/overview/addQuality.ts';
import { demoBook } from '../../../templates/demoShop/demoBook.ts';

/** What the quality part of the overview is laid out as, on a day with the first rows of the demo shop's log. */
function laidOut(day: string, rows?: number): OverviewDraft {
  const book = demoBook();
  const pourLog = book.pourLog.slice(0, rows);
  const draft: OverviewDraft = { rows: [], heights: new Map(), wide: [], charts: [] };
  addQuality(draft, qualitySummary({ ...book, pourLog }, day, { points: 'rounds' }));
  return draft;
}

const linesOf = ({ rows }: OverviewDraft) =>
  rows.map((cells) => cells.map(({ value }) => value).filter((value) => value !== ''));

describe('addQuality', () => {
  test('without a round says so and draws nothing', () => {
    const draft = laidOut('2026-12-01', 0);
    expect(linesOf(draft).flat()).toEqual([
      'Quality this week: Nothing logged',
      'No round of the last 8 weeks is in Pour log.',
    ]);
    expect(draft.charts).toEqual([]);
  });

  test('one round has a yield and no control chart yet', () => {
    const lines = linesOf(laidOut('2026-11-03', 1)).flat();
    // the first row of the demo shop's log: 15 of 16
    expect(lines).toContain('Quality this week: 94 % good');
    expect(lines).toContain('The control chart needs two rounds.');
  });

  test('every chart stands over a table as long as its ranges, of figures alone', () => {
    const draft = laidOut('2026-12-01');
    expect(draft.charts.map(({ title }) => title)).toEqual([
      'Share of bad pieces',
      'Bad pieces by what was wrong',
      'Yield against mold top',
      'Piece weight, Round stick 5 in',
    ]);
    for (const { columns, row } of draft.charts)
      for (const [index, { row: first, column, rows }] of columns.entries()) {
        expect(first + rows).toBeLessThanOrEqual(row);
        const cells = draft.rows.slice(first, first + rows - 1);
        const kinds = new Set(cells.map((line) => typeof line[column - 1]?.value));
        expect([...kinds]).toEqual([index === 0 ? 'string' : 'number']);
      }
    for (const value of linesOf(draft).flat())
      expect(String(value)).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('a share lies between its limits unless a signal stands beside it', () => {
    const draft = laidOut('2026-12-01');
    const table = draft.charts[0]?.columns[0];
    if (table === undefined) throw new Error('no control chart');
    for (const cells of draft.rows.slice(table.row, table.row + table.rows - 1)) {
      const [, share, , lower, upper, signal] = cells.map(({ value }) => value);
      const isOut = Number(share) > Number(upper) || Number(share) < Number(lower);
      expect(String(signal).includes('beyond its limit')).toBe(isOut);
    }
  });
});
