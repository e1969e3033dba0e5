import { describe, expect, test } from 'vitest';
import { changeQueue } from '../../../../workbench/page/grid/changeQueue.ts';
import type { FromWindow } from '../../../../workbench/server/messageTypes.ts';

type Change = Extract<FromWindow, { readonly kind: 'change' }>;

/** A queue whose commands end when the test says so. */
function queueAt(start: number) {
  const sent: Change[] = [];
  const ends: (() => void)[] = [];
  const queue = changeQueue(
    (change) => sent.push(JSON.parse(JSON.stringify(change))),
    (run) => ends.push(run),
    start,
  );
  const end = () => {
    for (const run of ends.splice(0)) run();
  };
  return { queue, sent, end };
}

const mutation = (id: string) => ({ id, params: {} });

describe('changeQueue', () => {
  test('sends the mutations of one command together, on the operation last seen', () => {
    const { queue, sent, end } = queueAt(5);
    queue.add(mutation('insert row'));
    queue.add(mutation('move formulas'));
    expect(sent).toEqual([]);
    end();
    expect(sent).toEqual([
      {
        kind: 'change',
        batch: 1,
        madeAt: 5,
        mutations: [mutation('insert row'), mutation('move formulas')],
      },
    ]);
  });

  test('holds the next batch until the server took the first', () => {
    const { queue, sent, end } = queueAt(5);
    queue.add(mutation('one'));
    end();
    queue.add(mutation('two'));
    end();
    expect(sent.map((change) => change.batch)).toEqual([1]);
    expect(queue.waiting()).toBe(2);
    queue.saw(6, true);
    queue.applied(1);
    expect(sent.map((change) => change.batch)).toEqual([1, 2]);
    queue.applied(2);
    expect(queue.waiting()).toBe(0);
  });

  test('a batch made on top of an own change counts as made after it', () => {
    const { queue, sent, end } = queueAt(5);
    queue.add(mutation('insert row'));
    queue.add(mutation('move formulas'));
    end();
    queue.add(mutation('type below'));
    end();
    queue.saw(6, true);
    queue.saw(7, true);
    queue.applied(1);
    expect(sent[1]?.madeAt).toBe(7);
  });

  test('a batch made before a change of somebody else stays made before it', () => {
    const { queue, sent, end } = queueAt(5);
    queue.add(mutation('one'));
    end();
    queue.add(mutation('two'));
    end();
    queue.saw(6, false);
    queue.saw(7, true);
    queue.applied(1);
    expect(sent[1]?.madeAt).toBe(5);
  });

  test('an answer to a batch that is not on its way changes nothing', () => {
    const { queue, end } = queueAt(0);
    queue.add(mutation('one'));
    end();
    queue.applied(9);
    expect(queue.waiting()).toBe(1);
  });
});
