import type { RunningTimer, TimerCue } from './timerTypes.ts';

const KINDS: readonly TimerCue['kind'][] = ['ready', 'earliest', 'latest', 'too cool'];

/** A timer that nobody stopped goes after this [ms]. */
const LONGEST = 24 * 3_600_000;

/** Timers from what the book keeps of them; those of yesterday and what is no timer are left out. */
export function readTimers(stored: string | null, now: number): readonly RunningTimer[] {
  if (stored === null || stored === '') return [];
  const all: unknown = JSON.parse(stored);
  return Array.isArray(all)
    ? all.filter(isTimer).filter(({ startedAt }) => now - startedAt < LONGEST)
    : [];
}

function isTimer(value: unknown): value is RunningTimer {
  if (!isRecord(value)) return false;
  const { id, key, label, order, startedAt, cues } = value;
  return (
    [id, key, label, order].every((text) => typeof text === 'string') &&
    typeof startedAt === 'number' &&
    Array.isArray(cues) &&
    cues.every(isCue)
  );
}

function isCue(value: unknown): boolean {
  if (!isRecord(value)) return false;
  const { kind, after, text } = value;
  return KINDS.some((one) => one === kind) && typeof after === 'number' && typeof text === 'string';
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
