/** Tolerance of {@link toBeNear}: exactly one of the two, always with its reason beside it in the test. */
export type Tolerance = { readonly relative: number } | { readonly absolute: number };

/** Vitest matcher: the received number lies within a stated tolerance of the expected one. */
export function toBeNear(received: unknown, expected: number, tolerance: Tolerance) {
  const allowed =
    'absolute' in tolerance ? tolerance.absolute : Math.abs(expected) * tolerance.relative;
  const gap = typeof received === 'number' ? Math.abs(received - expected) : Number.NaN;
  const pass = gap <= allowed;
  return {
    pass,
    message: () =>
      `expected ${String(received)} ${pass ? 'not ' : ''}to be within ${allowed} of ${expected}, off by ${gap}`,
  };
}

interface NearMatcher<R = unknown> {
  toBeNear: (expected: number, tolerance: Tolerance) => R;
}

declare module 'vitest' {
  // biome-ignore lint/suspicious/noExplicitAny: must repeat vitest's own type parameter
  interface Assertion<T = any> extends NearMatcher<T> {}
  interface AsymmetricMatchersContaining extends NearMatcher {}
}
