/** A pivot of a matrix with ones on its diagonal below this is rounding, not information. */
const LEAST_PIVOT = 1e-13;

/**
 * Inverse of a small matrix with a diagonal near 1, by Gauss-Jordan elimination with row exchange.
 * @param matrix - rows by columns, square
 * @returns the inverse, or `undefined` when rows depend on each other within rounding
 */
export function invertMatrix(
  matrix: readonly (readonly number[])[],
): readonly (readonly number[])[] | undefined {
  const size = matrix.length;
  const rows = matrix.map((row, index) => [...row, ...row.map((_, at) => (at === index ? 1 : 0))]);
  for (let column = 0; column < size; column += 1) {
    const below = rows.slice(column);
    const largest = Math.max(...below.map((row) => Math.abs(row[column] ?? 0)));
    // Turned around so that a matrix with a hole in it is refused too.
    if (!(largest > LEAST_PIVOT)) return undefined;
    const found = column + below.findIndex((row) => Math.abs(row[column] ?? 0) === largest);
    const pivotRow = (rows[found] ?? []).map((value, _, row) => value / (row[column] ?? 1));
    rows[found] = rows[column] ?? [];
    rows[column] = pivotRow;
    rows.forEach((row, index) => {
      const factor = row[column] ?? 0;
      if (index === column || factor === 0) return;
      rows[index] = row.map((value, at) => value - factor * (pivotRow[at] ?? 0));
    });
  }
  return rows.map((row) => row.slice(size));
}
