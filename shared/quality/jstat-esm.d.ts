declare module 'jstat-esm' {
  /** Inverse of the complementary error function, 0 < chance < 2. */
  export function erfcinv(chance: number): number;
}
