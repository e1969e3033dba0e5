import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { inBursts } from '../../../../workbench/page/grid/inBursts.ts';

describe('inBursts', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test('the first after a quiet time goes at once, the next wait and go together in order', () => {
    const taken: string[] = [];
    const hand = inBursts<string>(
      (item) => taken.push(item),
      () => {},
    );
    hand('a');
    vi.advanceTimersByTime(0);
    expect(taken).toEqual(['a']);
    hand('b');
    hand('c');
    vi.advanceTimersByTime(100);
    expect(taken).toEqual(['a']);
    vi.advanceTimersByTime(100);
    expect(taken).toEqual(['a', 'b', 'c']);
  });

  test('an item that fails is told and does not hold up the others', () => {
    const taken: number[] = [];
    const failures: unknown[] = [];
    const hand = inBursts<number>(
      (item) => {
        if (item === 1) throw new Error('broken');
        taken.push(item);
      },
      (error) => failures.push(error),
    );
    hand(1);
    hand(2);
    vi.advanceTimersByTime(500);
    expect(taken).toEqual([2]);
    expect(failures).toEqual([new Error('broken')]);
  });
});
