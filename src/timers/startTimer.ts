import type { StartTimerPayload, TimersChanged } from '../../shared/commands/timerCommands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { isRefused } from '../sidebar/orderInBook.ts';
import { NEEDED_TEXT, readPayload } from '../sidebar/readPayload.ts';
import { keepTimers, keptTimers } from './keptTimers.ts';
import { choicesFor } from './timersFor.ts';

/** More than anybody watches. */
const MOST = 16;

/** A page's clock may be off this much [ms]: windows are counted in seconds on clocks that agree. */
const APART = 120_000;

/**
 * Page call: starts a timer of an order, counted from when the button was pressed.
 * @param payload `{ order, key, at, token }`
 */
export function startTimer(payload: unknown): TimersChanged | Refused {
  const read = readPayload<StartTimerPayload>(FIELDS, payload);
  if (read.kind === 'refused') return read;
  const { order, key, at, token } = read.value;
  const startedAt = Number(at);
  const off = startedAt - Date.now();
  if (!/^\d{1,15}$/.test(at))
    return refuse('at', `at must be a count of milliseconds, got "${at}"`);
  if (Math.abs(off) > APART)
    return refuse(
      '',
      `The clock of this computer is ${Math.round(Math.abs(off) / 60_000)} min ${off > 0 ? 'ahead' : 'behind'}: set it right, then start the timer again.`,
    );
  const choices = choicesFor(order);
  if (isRefused(choices)) return choices;
  const choice = choices.find((one) => one.key === key);
  if (choice === undefined)
    return refuse('key', `order ${order} has no timer "${key}"; open the timers anew`);
  return withDocumentLock(() => {
    const running = keptTimers();
    if (running.some(({ id }) => id === token)) return { kind: 'ok', timers: running };
    const timers = [...running, { ...choice, id: token, order, startedAt }];
    if (timers.length > MOST || !keepTimers(timers))
      return refuse('', `${running.length} timers run already: stop one that is done first.`);
    return { kind: 'ok', timers };
  });
}

const FIELDS = { order: NEEDED_TEXT, key: NEEDED_TEXT, at: NEEDED_TEXT, token: NEEDED_TEXT };
