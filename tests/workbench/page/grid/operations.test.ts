import { describe, expect, test } from 'vitest';
import type { Operation } from '../../../../workbench/host/Host.ts';
import { operations } from '../../../../workbench/page/grid/operations.ts';

function windowNamed(window: string, waiting: () => number) {
  const taken: string[] = [];
  const protectedBy: unknown[] = [];
  const charts: unknown[] = [];
  const again: string[] = [];
  const take = operations({
    window,
    grid: { take: (operation) => taken.push(`${operation.sequence} ${operation.id}`) },
    queue: { add: () => {}, saw: () => {}, applied: () => {}, waiting },
    protect: (ranges) => protectedBy.push(ranges),
    charts: (list) => charts.push(list),
    startAgain: (because) => again.push(because),
  });
  return { take, taken, protectedBy, charts, again };
}

const operation = (
  sequence: number,
  origin: string,
  id = 'sheet.mutation.set-range-values',
): Operation => ({
  sequence,
  id,
  params: {},
  origin,
});

describe('operations', () => {
  test('makes the changes of others, and not its own a second time', () => {
    const { take, taken } = windowNamed('left', () => 0);
    take(operation(1, 'left'));
    take(operation(2, 'right'));
    take(operation(3, 'host'));
    expect(taken).toEqual([
      '2 sheet.mutation.set-range-values',
      '3 sheet.mutation.set-range-values',
    ]);
  });

  test('makes its own change again when another came in between, so that all windows end equal', () => {
    const { take, taken } = windowNamed('left', () => 1);
    take(operation(1, 'right'));
    take(operation(2, 'left'));
    expect(taken).toEqual([
      '1 sheet.mutation.set-range-values',
      '2 sheet.mutation.set-range-values',
    ]);
  });

  test.each(['insert-row', 'remove-col', 'move-range', 'delete-range', 'reorder-range'])(
    'starts again when its %s crossed another change, because that cannot be made twice',
    (kind) => {
      const { take, taken, again } = windowNamed('left', () => 1);
      take(operation(1, 'right'));
      take(operation(2, 'left', `sheet.mutation.${kind}`));
      expect(taken).toEqual(['1 sheet.mutation.set-range-values']);
      expect(again).toEqual([
        'Two windows moved rows, columns or sheets at the same time. Nothing was lost.',
      ]);
    },
  );

  test('gives the protected ranges to who asks before edits, never to the grid', () => {
    const { take, taken, protectedBy } = windowNamed('left', () => 0);
    take({ ...operation(1, 'host', 'workbench.protections'), params: ['a range'] });
    expect(taken).toEqual([]);
    expect(protectedBy).toEqual([['a range']]);
  });
});
