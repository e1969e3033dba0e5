/** One cell as the platform hands it to a sheet function. Dates may come from another realm. */
export type Cell = string | number | boolean | Date | null | undefined;

/** A cell, or a range as rows by columns. */
export type CellArgument = Cell | readonly (readonly Cell[])[];

export function isRange(value: CellArgument): value is readonly (readonly Cell[])[] {
  return Array.isArray(value);
}

/** True for a blank cell, an omitted argument, and text of blanks only. */
export function isBlankArgument(value: CellArgument): boolean {
  return (
    value === undefined || value === null || (typeof value === 'string' && value.trim() === '')
  );
}

/** `instanceof` fails for dates made in another realm. */
export function isDate(value: unknown): value is Date {
  return Object.prototype.toString.call(value) === '[object Date]';
}
