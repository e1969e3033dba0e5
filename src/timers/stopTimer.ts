import type { StopTimerPayload, TimersChanged } from '../../shared/commands/timerCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { NEEDED_TEXT, readPayload } from '../sidebar/readPayload.ts';
import { keepTimers, keptTimers } from './keptTimers.ts';

/**
 * Page call: stops a timer; one that is gone already is no mistake.
 * @param payload `{ id }`
 */
export function stopTimer(payload: unknown): TimersChanged | Refused {
  const read = readPayload<StopTimerPayload>({ id: NEEDED_TEXT }, payload);
  if (read.kind === 'refused') return read;
  return withDocumentLock(() => {
    const timers = keptTimers().filter(({ id }) => id !== read.value.id);
    keepTimers(timers);
    return { kind: 'ok', timers };
  });
}
