import { expect } from 'vitest';

/** Products of the book's lengths, equal but for their last binary digits. */
export function toBeNearAll(found: readonly number[], wanted: readonly number[]): void {
  expect(found).toHaveLength(wanted.length);
  found.forEach((value, place) => {
    expect(value).toBeNear(wanted[place] ?? Number.NaN, { relative: 1e-12 });
  });
}
