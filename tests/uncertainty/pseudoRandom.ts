/** Ordinary pseudo-random numbers from 0 to 1 with a seed, to hold the even points against: a linear congruential generator. */
export function pseudoRandom(seed: number): () => number {
  let state = BigInt(seed);
  return () => {
    // Knuth's multiplier and increment, modulo 2^64; the low bits are poor and left out
    state = (state * 6364136223846793005n + 1442695040888963407n) % 2n ** 64n;
    return Number(state >> 11n) / 2 ** 53;
  };
}

/** As many points as wanted, each value drawn on its own. */
export function pseudoRandomPoints(
  count: number,
  dimensions: number,
  seed: number,
): readonly (readonly number[])[] {
  const next = pseudoRandom(seed);
  return Array.from({ length: count }, () => Array.from({ length: dimensions }, next));
}
