import { isDateOfAnyRealm } from './realm.ts';

/**
 * What passes between a page and the add-on: JSON, copied.
 *
 * As on the platform a Date, a function or a circular value fails, also when nested; `undefined` becomes null in arrays and
 * disappears from objects.
 *
 * @throws Error naming the place of the first value that may not pass
 */
export function jsonOnly(value: unknown, place: string): unknown {
  refuse(value, place, []);
  return value === undefined ? null : JSON.parse(JSON.stringify(value));
}

function refuse(value: unknown, place: string, above: readonly unknown[]): void {
  if (typeof value === 'function') throw new Error(`${place} holds a function, which may not pass`);
  if (typeof value === 'bigint' || typeof value === 'symbol') {
    throw new Error(`${place} holds a ${typeof value}, which may not pass`);
  }
  if (typeof value !== 'object' || value === null) return;
  if (isDateOfAnyRealm(value)) throw new Error(`${place} holds a Date, which may not pass`);
  if (above.includes(value)) throw new Error(`${place} holds itself, which may not pass`);
  for (const [key, item] of Object.entries(value)) {
    refuse(item, `${place}.${key}`, [...above, value]);
  }
}
