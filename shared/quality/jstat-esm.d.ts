declare module 'jstat-esm' {
  /** Complementary error function. */
  export function erfc(value: number): number;
  /** Inverse of the complementary error function, 0 < chance < 2. */
  export function erfcinv(chance: number): number;
}
