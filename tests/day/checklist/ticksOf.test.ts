import { describe, expect, test } from 'vitest';
import { ticksOf } from '../../../shared/day/checklist/ticksOf.ts';
import { DAY_TABLE } from './dayData.ts';

const HOUR = 3600;
const NOW = 12 * HOUR;

function tickOf(id: string, more: { readonly at?: number; readonly who?: string } = {}) {
  return { id, isTicked: true, who: '', ...more };
}

describe('ticksOf', () => {
  test('a tick ends its task; it began as long before as it was planned to take', () => {
    const read = ticksOf([tickOf('2101 lay out', { at: 8.5 * HOUR, who: 'Cleo' })], DAY_TABLE, NOW);
    expect(read).toEqual({
      ticks: [
        { id: '2101 lay out', startedAt: 8.5 * HOUR - 600, finishedAt: 8.5 * HOUR, who: 'Cleo' },
      ],
      untimed: [],
      ahead: [],
    });
  });

  test('without a time it counts as done when planned, at the latest now, and says so', () => {
    const ids = ['2101 lay out', '2101 pack'];
    const { ticks, untimed } = ticksOf(
      ids.map((id) => tickOf(id)),
      DAY_TABLE,
      NOW,
    );
    expect(ticks.map(({ finishedAt }) => finishedAt)).toEqual([8 * HOUR + 600, NOW]);
    expect(untimed).toEqual(ids);
  });

  test('a time to come counts as now and says so', () => {
    const { ticks, ahead } = ticksOf([tickOf('2101 lay out', { at: 13 * HOUR })], DAY_TABLE, NOW);
    expect(ticks[0]?.finishedAt).toBe(NOW);
    expect(ahead).toEqual(['2101 lay out']);
  });

  test('boxes without a tick, pauses and what is not planned tell nothing', () => {
    const rows = [
      { id: '2101 pack', isTicked: false, at: 9 * HOUR, who: '' },
      tickOf('2101 round 1 Between layers', { at: 9 * HOUR }),
      tickOf('1999 pack', { at: 9 * HOUR }),
    ];
    expect(ticksOf(rows, DAY_TABLE, NOW)).toEqual({ ticks: [], untimed: [], ahead: [] });
  });
});
