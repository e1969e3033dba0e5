/** Bisection alone would need some 50 steps; the method never needs many more. */
const MOST_STEPS = 120;
/** Bracket over the root at which to stop: a few units of a double's last digit. */
const PRECISION = 4e-15;

/**
 * Where a continuous function changes sign between two points: inverse quadratic steps where they are safe, halving where
 * they are not. It cannot leave the bracket and needs no derivative: eigenvalues crowd, cooling curves are flat at their end.
 *
 * @param value - must differ in sign at the two points, which the caller guarantees
 * @returns the root, to a few units of its last digit
 * @source CHANDRUPATLA, https://doi.org/10.1016/S0965-9978(96)00051-8
 */
export function findRoot(value: (x: number) => number, low: number, high: number): number {
  let near = { x: low, f: value(low) };
  let far = { x: high, f: value(high) };
  let share = 0.5;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const x = near.x + share * (far.x - near.x);
    const next = { x, f: value(x) };
    const sameSide = Math.sign(next.f) === Math.sign(near.f);
    const old = sameSide ? near : far;
    if (!sameSide) far = near;
    near = next;
    const best = Math.abs(near.f) < Math.abs(far.f) ? near : far;
    const width = Math.abs(far.x - near.x);
    const least = (PRECISION * Math.abs(best.x) + Number.MIN_VALUE) / width;
    if (best.f === 0 || least > 0.5) return best.x;
    share = Math.min(1 - least, Math.max(least, nextShare(near, far, old)));
  }
  return near.x;
}

interface Point {
  readonly x: number;
  readonly f: number;
}

/** Share of the bracket for the next trial: inverse quadratic interpolation while the three points curve gently. */
function nextShare(near: Point, far: Point, old: Point): number {
  const along = (near.x - far.x) / (old.x - far.x);
  const rise = (near.f - far.f) / (old.f - far.f);
  if (rise ** 2 >= along || (1 - rise) ** 2 >= 1 - along) return 0.5;
  const one = (near.f / (far.f - near.f)) * (old.f / (far.f - old.f));
  const stretch = (old.x - near.x) / (far.x - near.x);
  return one + stretch * (near.f / (old.f - near.f)) * (far.f / (old.f - far.f));
}
