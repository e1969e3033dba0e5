import { createContext, Script } from 'node:vm';

/**
 * How long the built script takes to load in a fresh, empty context, as on every sheet-function call.
 * Each load compiles anew: a comment that differs keeps the engine's code cache out of it.
 * @returns milliseconds of each load
 */
export function loadTimes(code: string, count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => {
    const context = createContext({});
    const start = performance.now();
    new Script(`${code}\n//${index}`).runInContext(context);
    return performance.now() - start;
  });
}

/** The middle value; the mean of the two middle ones for an even count. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? upper) + upper) / 2;
}
