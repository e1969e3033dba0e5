import { entry } from './entry.ts';

/** A symmetric tridiagonal matrix after elimination, ready for any right side. */
export interface Eliminated {
  readonly pivots: Float64Array;
  /** Of the row above, per row */
  readonly ratios: Float64Array;
}

/**
 * Eliminates a symmetric tridiagonal matrix from the top down. No pivoting: every diagonal outweighs its neighbors.
 * @param diagonal - one per row
 * @param off - between each row and the next, at index of the upper row
 */
export function eliminate(diagonal: Float64Array, off: Float64Array): Eliminated {
  const pivots = diagonal.slice();
  const ratios = new Float64Array(diagonal.length);
  for (let row = 1; row < diagonal.length; row += 1) {
    const above = entry(off, row - 1);
    const ratio = above / entry(pivots, row - 1);
    ratios[row] = ratio;
    pivots[row] = entry(diagonal, row) - ratio * above;
  }
  return { pivots, ratios };
}

/**
 * Solves for one right side: ratios down, division by the pivots, ratios up.
 * @returns one value per row
 */
export function solveEliminated({ pivots, ratios }: Eliminated, right: Float64Array): Float64Array {
  const solution = right.slice();
  const count = solution.length;
  for (let row = 1; row < count; row += 1)
    solution[row] = entry(right, row) - entry(ratios, row) * entry(solution, row - 1);
  for (let row = 0; row < count; row += 1)
    solution[row] = entry(solution, row) / entry(pivots, row);
  for (let row = count - 2; row >= 0; row -= 1)
    solution[row] = entry(solution, row) - entry(ratios, row + 1) * entry(solution, row + 1);
  return solution;
}
