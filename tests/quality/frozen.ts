/** A list that cannot be changed, nor its rows. */
export function frozen<Row extends object>(rows: readonly Row[]): readonly Row[] {
  return Object.freeze(rows.map((row) => Object.freeze(row)));
}
