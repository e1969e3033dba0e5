import { asciiJson } from '../../words/asciiJson.ts';
import type { RunningTimer } from './timerTypes.ts';

/** A property of the document holds 9 kB. */
const ROOM = 9000;

/** The running timers as the document keeps them. */
export function timersText(timers: readonly RunningTimer[]): string {
  return asciiJson(timers);
}

/** Whether the document has room for them. */
export function hasRoom(timers: readonly RunningTimer[]): boolean {
  return timersText(timers).length <= ROOM;
}
