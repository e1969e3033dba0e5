/**
 * Numbers from 0 up to but not including 1, one after another, the same for the same seed.
 * Shifts by 13, 17 and 5 of 32 bits; period 2^32 - 1.
 * @param seed - whole
 * @source MARSAGLIA2003, section 3
 */
export function randomSource(seed: number): () => number {
  // Seeds next to each other are spread out; 0 has no successor.
  let state = Math.imul(seed + 1, 0x9e3779b1) >>> 0 || 1;
  const next = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
  next();
  return next;
}
