import { readTimers } from '../../shared/day/timers/readTimers.ts';
import type { RunningTimer } from '../../shared/day/timers/timer.ts';
import { asciiJson } from '../platform/asciiJson.ts';

/** Where the document keeps its timers: they outlive the panel, and everybody who has the workbook open shares them. */
const KEY = 'timers';
/** A property holds 9 kB. */
const ROOM = 9000;

function store(): GoogleAppsScript.Properties.Properties {
  const found: GoogleAppsScript.Properties.Properties | null =
    PropertiesService.getDocumentProperties(); // null outside a document, whatever the types say
  if (found === null) throw new Error('This only works inside a spreadsheet.');
  return found;
}

export function keptTimers(): readonly RunningTimer[] {
  return readTimers(store().getProperty(KEY), Date.now());
}

/**
 * Keeps the timers; call it inside the document lock.
 * @returns whether there was room for them: if not, those kept before stay
 */
export function keepTimers(timers: readonly RunningTimer[]): boolean {
  const text = asciiJson(timers);
  if (text.length > ROOM) return false;
  store().setProperty(KEY, text);
  return true;
}
