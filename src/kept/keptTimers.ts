import { readTimers } from '../../shared/day/timers/readTimers.ts';
import { timersText } from '../../shared/day/timers/timersText.ts';
import type { RunningTimer } from '../../shared/day/timers/timerTypes.ts';

/** Where the document keeps its timers: they outlive the panel, and everybody who has the workbook open shares them. */
const KEY = 'timers';

function store(): GoogleAppsScript.Properties.Properties {
  const found: GoogleAppsScript.Properties.Properties | null =
    PropertiesService.getDocumentProperties(); // null outside a document, whatever the types say
  if (found === null) throw new Error('This only works inside a spreadsheet.');
  return found;
}

export function keptTimers(): readonly RunningTimer[] {
  return readTimers(store().getProperty(KEY), Date.now());
}

/** Keeps the timers; call it inside the document lock. */
export function keepTimers(timers: readonly RunningTimer[]): void {
  store().setProperty(KEY, timersText(timers));
}
