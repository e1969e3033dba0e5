import type { HostState } from './hostState.ts';
import type { AlertText } from './platform/session.ts';

/** Alerts that wait for a window's answer. */
export interface AlertQueue {
  /** Shows an alert and resolves with the button: `OK`, `CANCEL`, `YES`, `NO` or `CLOSE`. */
  ask(window: string, alert: AlertText): Promise<string>;
  answer(id: number, button: string): void;
}

const BUTTONS: readonly string[] = ['OK', 'CANCEL', 'YES', 'NO', 'CLOSE'];

export function alertQueue(state: HostState): AlertQueue {
  const waiting = new Map<number, (button: string) => void>();
  let last = 0;
  return {
    ask: (window, alert) =>
      new Promise((resolve) => {
        last += 1;
        waiting.set(last, resolve);
        state.emit({ kind: 'ui', window, request: { kind: 'alert', id: last, ...alert } });
      }),
    answer: (id, button) => {
      const name = button.toUpperCase();
      if (!BUTTONS.includes(name)) throw new Error(`there is no button ${button}`);
      waiting.get(id)?.(name);
      waiting.delete(id);
    },
  };
}
