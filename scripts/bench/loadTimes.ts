import { createContext, Script } from 'node:vm';

export interface LoadTime {
  /** Compiling the text anew [ms] */
  readonly compile: number;
  /** Running it in a fresh, empty context [ms] */
  readonly run: number;
}

/**
 * How long the built script takes to load in a fresh, empty context, as on every sheet-function call.
 * Each is compiled anew: a comment that differs keeps the engine's code cache out of it.
 */
export function loadTimes(code: string, count: number): readonly LoadTime[] {
  return Array.from({ length: count }, (_, index) => {
    const context = createContext({});
    const start = performance.now();
    const script = new Script(`${code}\n//${index}`);
    const compiled = performance.now();
    script.runInContext(context);
    return { compile: compiled - start, run: performance.now() - compiled };
  });
}

/** The middle value; the mean of the two middle ones for an even count. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? upper) + upper) / 2;
}
