import { call } from '../page/call.ts';
import type { Store } from '../panel/store.ts';
import { work } from '../panel/work.ts';
import { wakeSound } from './playCue.ts';

/** Shows what runs and, for the order on show, what can be started. */
export async function openTimers(
  store: Store,
  order = store.get().onShow?.plan.order ?? '',
): Promise<void> {
  const answer = await work(store, 'Reading the timers…', 'timersFor', { order });
  if (answer === undefined) return;
  const { timers, choices } = answer;
  store.set({ view: { kind: 'timers', order, choices }, timers, notice: undefined });
}

/** Starts a timer from the moment of the press, however long the call takes. */
export async function startTheTimer(store: Store, order: string, key: string): Promise<void> {
  const at = String(Date.now());
  wakeSound();
  // One press on one computer: the moment and a draw are enough to tell it from any other.
  const token = `${at}-${Math.random().toString(36).slice(2)}`;
  const payload = { order, key, at, token };
  const changed = await work(store, 'Starting the timer…', 'startTimer', payload);
  if (changed === undefined) return;
  store.set({ timers: changed.timers, notice: undefined });
}

export async function stopTheTimer(store: Store, id: string): Promise<void> {
  const changed = await work(store, 'Stopping the timer…', 'stopTimer', { id });
  if (changed === undefined) return;
  store.set({ timers: changed.timers, notice: undefined });
}

/** Timers go on while the panel is closed: a panel that opens asks for them, without keeping anybody from working. */
export async function fetchTimers(store: Store): Promise<void> {
  try {
    const answer = await call('timersFor', {});
    if (answer.kind === 'ok') store.follow({ timers: answer.timers });
  } catch {
    // The strip says it: who relies on a timer must know that none is there.
    store.follow({ timers: undefined });
  }
}
