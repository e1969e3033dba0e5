import { entry } from './entry.ts';

/** A chain of cells, each tied to the next and at its two ends to the outside. */
export interface Chain {
  /** One per cell, > 0 */
  readonly capacities: Float64Array;
  /** One more than cells: outside to first, cell to cell, last to outside; >= 0 */
  readonly conductances: Float64Array;
}

/** The chain's symmetric tridiagonal matrix after elimination, ready for any right side. */
export interface Eliminated {
  /** 1 / pivot, per row */
  readonly inverses: Float64Array;
  /** Of each row to the row above */
  readonly ratios: Float64Array;
}

/**
 * Eliminates the matrix capacity + weight x conductance from the first row to the last (Thomas algorithm). No pivoting: every
 * diagonal outweighs its neighbors.
 */
export function eliminate({ capacities, conductances }: Chain, weight: number): Eliminated {
  const inverses = new Float64Array(capacities.length);
  const ratios = new Float64Array(capacities.length);
  let below = weight * entry(conductances, 0);
  let inverse = 0;
  for (let row = 0; row < inverses.length; row += 1) {
    const above = weight * entry(conductances, row + 1);
    // The outside is no row: the first ratio is 0 times what ties the first cell to it.
    const ratio = -below * inverse;
    ratios[row] = ratio;
    inverse = 1 / (entry(capacities, row) + below + above + ratio * below);
    inverses[row] = inverse;
    below = above;
  }
  return { inverses, ratios };
}

/**
 * Turns a right side into the solution, in place: ratios forward, pivots and ratios backward.
 * @returns the same array
 */
export function solveTridiagonal(
  { inverses, ratios }: Eliminated,
  right: Float64Array,
): Float64Array {
  const last = right.length - 1;
  for (let row = 1; row <= last; row += 1)
    right[row] = entry(right, row) - entry(ratios, row) * entry(right, row - 1);
  let above = entry(right, last) * entry(inverses, last);
  right[last] = above;
  for (let row = last - 1; row >= 0; row -= 1) {
    above = entry(right, row) * entry(inverses, row) - entry(ratios, row + 1) * above;
    right[row] = above;
  }
  return right;
}
