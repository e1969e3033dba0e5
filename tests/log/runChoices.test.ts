import { describe, expect, test } from 'vitest';
import { loggedRuns, nextRunId, runChoices, runOfAnother } from '../../shared/log/runChoices.ts';
import { logBook } from './logBook.ts';

function bookOf(runs: readonly (readonly [run: string, order: string, good?: number])[]) {
  return logBook({
    orders: [
      { order: '1042', quantity: 40 },
      { order: '104', quantity: 10 },
    ],
    pourLog: runs.map(([run, order, good = 5]) => ({ run, order, poured: 20, good })),
  });
}

describe('nextRunId', () => {
  test.each([
    { runs: [], next: '1042-1' },
    { runs: ['1042-1', '1042-1'], next: '1042-2' },
    { runs: ['1042-1', '1042-9', '1042-2'], next: '1042-10' },
    // Named otherwise, but a run all the same.
    { runs: ['R-1042'], next: '1042-2' },
    { runs: ['1042-2b', 'first', 'second'], next: '1042-4' },
  ])('after $runs comes $next', ({ runs, next }) => {
    expect(nextRunId(bookOf(runs.map((run) => [run, '1042'])), '1042')).toBe(next);
  });

  test('runs of other orders do not count, even when their number starts alike', () => {
    expect(nextRunId(bookOf([['1042-7', '1042']]), '104')).toBe('104-1');
  });
});

describe('loggedRuns', () => {
  test('lists each run once with its rows, the last logged first', () => {
    const book = bookOf([
      ['1042-1', '1042'],
      ['1042-2', '1042'],
      ['104-1', '104'],
      ['1042-1', '1042'],
    ]);
    expect(loggedRuns(book, '1042')).toEqual([
      { run: '1042-1', rounds: 2, nextRound: 3 },
      { run: '1042-2', rounds: 1, nextRound: 2 },
    ]);
  });
});

describe('runChoices', () => {
  const started = bookOf([['1042-1', '1042']]);

  test('begins with a new run when nothing is logged', () => {
    expect(runChoices(bookOf([]), '1042', [])).toEqual([
      { run: '1042-1', rounds: 0, nextRound: 1 },
    ]);
  });

  test('goes on with the run that was logged last while pieces are lacking', () => {
    expect(runChoices(started, '1042', ['Order', '104-1'])).toEqual([
      { run: '1042-1', rounds: 1, nextRound: 2 },
      { run: '1042-2', rounds: 0, nextRound: 1 },
    ]);
  });

  test('takes the run whose sheet was made last', () => {
    expect(runChoices(started, '1042', ['Order', '1042-2'])[0]).toEqual({
      run: '1042-2',
      rounds: 0,
      nextRound: 1,
    });
  });

  test('starts a new run once the order is complete', () => {
    const complete = bookOf([
      ['1042-1', '1042', 20],
      ['1042-1', '1042', 20],
    ]);
    expect(runChoices(complete, '1042', [])[0]).toEqual({
      run: '1042-2',
      rounds: 0,
      nextRound: 1,
    });
  });
});

describe('runOfAnother', () => {
  test('names the order that has the run already', () => {
    expect(runOfAnother(bookOf([['1042-1', '1042']]), '1042-1', '104')).toEqual({
      field: 'run',
      text: 'run must be a run of order 104, got "1042-1", which is logged for order 1042',
    });
  });

  test('lets an order go on with its own run, and anybody take a new one', () => {
    const book = bookOf([['1042-1', '1042']]);
    expect(runOfAnother(book, '1042-1', '1042')).toBeUndefined();
    expect(runOfAnother(book, '104-1', '104')).toBeUndefined();
  });
});
