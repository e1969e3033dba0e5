import { describe, expect, test } from 'vitest';
import {
  changedState,
  FIRST_STATE,
  lastView,
  type PageState,
} from '../../../sidebar/panel/pageState.ts';
import { type DayView, withProblems } from '../../../sidebar/panel/view.ts';

const DAY: DayView = {
  kind: 'day',
  form: { kind: 'ok', today: '2026-12-01', orders: [], isFollowed: false },
  orders: ['1007'],
  firstDay: '2026-12-02',
  days: '3',
  answer: undefined,
  drawnDay: 1,
  person: 'AK',
  problems: [],
};

const TIMERS = { kind: 'timers', order: '1007', choices: [] } as const;

function changedBy(...changes: readonly Partial<PageState>[]): PageState {
  return changes.reduce<PageState>(changedState, FIRST_STATE);
}

describe('a change of view', () => {
  test('keeps the choices of a pour day until it is opened again', () => {
    const left = changedBy({ view: DAY }, { view: { kind: 'plan' } }, { view: TIMERS });
    expect(left.view).toBe(TIMERS);
    expect(lastView(left, 'day')).toBe(DAY);
    expect(lastView(left, 'stock')).toBeUndefined();
  });

  test('keeps the last of a kind, and the one on show comes first', () => {
    const again = { ...DAY, person: 'BO' };
    const left = changedBy({ view: DAY }, { view: TIMERS }, { view: again }, { view: TIMERS });
    expect(left.left).toEqual([again]);
    const shown = { ...DAY, person: 'CM' };
    expect(lastView(changedState(left, { view: shown }), 'day')).toBe(shown);
  });

  test('drops a view whose data are read anew each time', () => {
    expect(changedBy({ view: TIMERS }, { view: { kind: 'plan' } }).left).toEqual([]);
  });

  test('leaves what is common to all as it was', () => {
    const { who, timers } = changedBy({ who: 'AK', timers: undefined }, { view: TIMERS });
    expect({ who, timers }).toEqual({ who: 'AK', timers: undefined });
  });
});

test('problems go to a view that has fields, and to no other', () => {
  const problems = [{ field: 'first day', text: 'first day must be given' }];
  expect(withProblems(DAY, problems)).toEqual({ ...DAY, problems });
  expect(withProblems(TIMERS, problems)).toBe(TIMERS);
});
