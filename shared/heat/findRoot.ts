/** Halvings after which the bracket is about 1e-15 of its first width: nothing is left of a double's digits. */
const HALVINGS = 50;

/**
 * Where a continuous function changes sign between two points, by bisection. It cannot leave the bracket and needs no
 * derivative, which matters more here than speed: eigenvalues crowd, and cooling curves are flat at their end.
 *
 * @param low - a point on one side of the root
 * @param high - a point on the other side; the function must differ in sign there, which the caller guarantees
 * @returns the root, to about 1e-15 of the bracket's width
 */
export function findRoot(value: (x: number) => number, low: number, high: number): number {
  const signAtLow = Math.sign(value(low));
  let [left, right] = [low, high];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (left + right) / 2;
    if (Math.sign(value(middle)) === signAtLow) left = middle;
    else right = middle;
  }
  return (left + right) / 2;
}
