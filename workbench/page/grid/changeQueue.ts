import type { FromWindow, WindowMutation } from '../../server/messageTypes.ts';

type Change = Extract<FromWindow, { readonly kind: 'change' }>;

/** A window's own changes on their way to the server, each with the operation it was made on. */
export interface ChangeQueue {
  /** Takes one mutation; those of one command go out together. */
  add(mutation: WindowMutation): void;
  /** An operation arrived: `own` when this window made it. */
  saw(sequence: number, own: boolean): void;
  /** The server took a batch. */
  applied(batch: number): void;
  /** Changes not yet taken by the server. */
  waiting(): number;
}

/**
 * One batch is on its way at a time: the next was made on top of it, which the server can only know when it has the first.
 *
 * @param send - sends a batch
 * @param later - calls back when the running command is over
 * @param start - sequence number of the snapshot
 */
export function changeQueue(
  send: (change: Change) => void,
  later: (run: () => void) => void,
  start: number,
): ChangeQueue {
  const batches: { batch: number; madeAt: number; mutations: WindowMutation[] }[] = [];
  let [known, last, sent, open] = [start, 0, 0, false];

  function next() {
    const first = batches[0];
    if (!first || first.batch === sent || (open && batches.length === 1)) return;
    sent = first.batch;
    send({ kind: 'change', ...first });
  }

  return {
    add: (mutation) => {
      const current = batches.at(-1);
      if (open && current) {
        current.mutations.push(mutation);
        return;
      }
      last += 1;
      open = true;
      batches.push({ batch: last, madeAt: known, mutations: [mutation] });
      later(() => {
        open = false;
        next();
      });
    },
    saw: (sequence, own) => {
      for (const waiting of batches) {
        if (own && waiting.batch !== sent && waiting.madeAt === sequence - 1)
          waiting.madeAt = sequence;
      }
      known = sequence;
    },
    applied: (batch) => {
      if (batches[0]?.batch !== batch) return;
      batches.shift();
      next();
    },
    waiting: () => batches.length,
  };
}
