import { describe, expect, test } from 'vitest';
import { type WeekCapacity, weekCapacity } from '../../../shared/day/shop/weekCapacity.ts';
import { addCapacity } from '../../../shared/paper/overview/addCapacity.ts';
import type { OverviewDraft } from '../../../shared/paper/overview/addOverviewTable.ts';
import { demoBook } from '../../../templates/demoShop/demoBook.ts';
import { DAY, HOUR } from '../planning/demoDay.ts';
import { dayBook } from './dayBook.ts';

/** A Monday */
const MONDAY = '2026-11-30';

describe('the week ahead of the demo shop', () => {
  const week = weekCapacity(demoBook(), MONDAY);
  if (week.kind !== 'planned') throw new Error('it has open orders');

  test('hours there are those of People, day by day', () => {
    // JB 8 h, KM 7.5 h on weekdays; RT 5 h on Tuesday and Thursday.
    expect(week.days.map(({ there }) => there / HOUR)).toEqual([
      15.5, 20.5, 15.5, 20.5, 15.5, 0, 0,
    ]);
    expect(week.days.map(({ day }) => day).slice(-1)).toEqual(['2026-12-06']);
  });

  test('every round and every packed order is in one day, and all hands-on time', () => {
    const { plan, days } = week;
    const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);
    const rounds = plan.entries.filter(({ what }) => what === 'set on the plate');
    expect(sum(days.map((day) => day.rounds))).toBe(rounds.length);
    expect(days.flatMap(({ packed }) => packed).sort()).toEqual(['1007', '1008', '1009', '1010']);
    days.forEach(({ packed }, place) => {
      for (const name of packed) {
        const finish = plan.orders.find(({ order }) => order === name)?.finish ?? Number.NaN;
        expect(Math.floor(finish / DAY)).toBe(place);
      }
    });
    const bars = plan.bars.filter(({ kind }) => kind === 'person');
    expect(sum(days.map(({ work }) => work))).toBeNear(
      sum(bars.map(({ from, to, amount }) => ((to - from) * amount) / 100)),
      { relative: 1e-12 }, // the same sums in another order
    );
    for (const { work, there } of days) expect(work).toBeLessThanOrEqual(there);
  });
});

test('no open order: the week is free; a figure that cannot be is named', () => {
  const orders = [{ order: '1', status: 'asked' }] as const;
  expect(weekCapacity(dayBook({ orders }), MONDAY)).toEqual({ kind: 'free' });
  const open = [{ ...orders[0], status: 'accepted' }] as const;
  const shop = { demoldShare: 0.6, inspectShare: 0.5 };
  expect(weekCapacity(dayBook({ orders: open, shop }), MONDAY)).toEqual({
    kind: 'refused',
    because: 'share of demolding and inspecting must be at most 1, got 1.1',
  });
});

describe('on the Overview', () => {
  function sheetOf(week: WeekCapacity): readonly string[] {
    const draft: OverviewDraft = { rows: [], heights: new Map(), wide: [], charts: [] };
    addCapacity(draft, week, { day: MONDAY, system: 'US' });
    return draft.rows.map((row) =>
      row
        .map(({ value }) => String(value))
        .join(' ')
        .trim(),
    );
  }

  test('it says whether all fits, the bottleneck, and one row a day', () => {
    const rows = sheetOf(weekCapacity(demoBook(), MONDAY));
    expect(rows[1]).toBe('The week ahead');
    expect(rows[2]).toMatch(/^It fits\. All 4 orders are packed by Thu Dec 3, 11:\d\d am\.$/);
    expect(rows[3]).toMatch(/^Round stick 5 in is the bottleneck: taken for 99 % /);
    expect(rows[4]).toBe('Day Hours there Hours planned Share planned Rounds Packed');
    expect(rows[5]).toMatch(/^Mon Nov 30 15\.5 /);
    expect(rows[10]).toBe('Sat Dec 5 0 0  0');
  });

  test('orders that do not fit say why', () => {
    const [, , fit, why] = sheetOf(
      weekCapacity(
        dayBook({ people: [], orders: [{ order: '2041', status: 'accepted' }] }),
        MONDAY,
      ),
    );
    expect(fit).toBe('Nothing can be planned.');
    expect(why).toBe('2041: quantity must be given, got nothing.');
  });

  test('a free week and one that cannot be planned are one sentence', () => {
    expect(sheetOf({ kind: 'free' }).slice(2)).toEqual(['No order is waiting to be poured.']);
    expect(
      sheetOf({ kind: 'refused', because: 'cups must be at least 1, got 0' }).slice(2),
    ).toEqual(['The week cannot be planned: cups must be at least 1, got 0.']);
  });
});
