import type { CallResult } from '../../host/Host.ts';

/** Calls of add-on functions that wait for their answer. */
export interface AddOnCalls {
  call(name: string, args: readonly unknown[]): Promise<CallResult>;
  result(call: number, result: CallResult): void;
  running(): number;
}

export function addOnCalls(
  send: (call: number, name: string, args: readonly unknown[]) => void,
  changed: () => void,
): AddOnCalls {
  const waiting = new Map<number, (result: CallResult) => void>();
  let last = 0;
  return {
    call: (name, args) =>
      new Promise((resolve) => {
        last += 1;
        waiting.set(last, resolve);
        send(last, name, args);
        changed();
      }),
    result: (call, result) => {
      const resolve = waiting.get(call);
      waiting.delete(call);
      changed();
      resolve?.(result);
    },
    running: () => waiting.size,
  };
}
