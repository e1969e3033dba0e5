/** A rectangle of cells, counted from zero, ends included. */
export interface Box {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

const CELLS = /^\$?([A-Za-z]{1,3})?\$?(\d+)?(?::(?=.)\$?([A-Za-z]{1,3})?\$?(\d+)?)?$/;

/**
 * Reads `B7`, `B7:D9`, `B:D`, `2:5` or `B7:D`.
 *
 * @param size - rows and columns of the sheet, where open ends stop
 * @returns undefined when the text is no range, or a range outside the sheet
 */
export function parseA1(
  text: string,
  size: { readonly rows: number; readonly columns: number },
): Box | undefined {
  const match = CELLS.exec(text.trim());
  if (!match || text.trim() === '') return undefined;
  const [, column, row, endColumn, endRow] = match;
  if (!text.includes(':') && !(column && row)) return undefined;
  const single = !text.includes(':');
  const box = {
    startRow: row ? Number(row) - 1 : 0,
    startColumn: column ? columnNumber(column) : 0,
    endRow: single ? Number(row) - 1 : endRow ? Number(endRow) - 1 : size.rows - 1,
    endColumn: single
      ? columnNumber(column ?? '')
      : endColumn
        ? columnNumber(endColumn)
        : size.columns - 1,
  };
  return isInside(box, size) ? box : undefined;
}

function isInside(box: Box, size: { readonly rows: number; readonly columns: number }): boolean {
  return (
    box.startRow >= 0 &&
    box.startColumn >= 0 &&
    box.endRow >= box.startRow &&
    box.endColumn >= box.startColumn &&
    box.endRow < size.rows &&
    box.endColumn < size.columns
  );
}

/** `B7` or `B7:D9`. */
export function formatA1(box: Box): string {
  const start = cellName(box.startRow, box.startColumn);
  const end = cellName(box.endRow, box.endColumn);
  return start === end ? start : `${start}:${end}`;
}

export function cellName(row: number, column: number): string {
  return `${columnName(column)}${row + 1}`;
}

export function columnName(column: number): string {
  const rest = column % 26;
  const letter = String.fromCharCode(65 + rest);
  return column < 26 ? letter : columnName((column - rest) / 26 - 1) + letter;
}

export function columnNumber(name: string): number {
  return [...name.toUpperCase()].reduce((sum, c) => sum * 26 + c.charCodeAt(0) - 64, 0) - 1;
}

/** Splits `'My sheet'!A1:B2` into sheet name and cells; the sheet is absent when not named. */
export function splitSheet(text: string): { readonly sheet?: string; readonly cells: string } {
  const at = text.lastIndexOf('!');
  if (at < 0) return { cells: text };
  const name = text.slice(0, at);
  const quoted = /^'(.*)'$/s.exec(name);
  return {
    sheet: quoted ? (quoted[1] ?? '').replace(/''/g, "'") : name,
    cells: text.slice(at + 1),
  };
}

export function quoteSheet(name: string): string {
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) ? name : `'${name.replace(/'/g, "''")}'`;
}

/** Calls back for every cell of a box, row by row. */
export function eachCell(box: Box, visit: (row: number, column: number) => void): void {
  for (let row = box.startRow; row <= box.endRow; row++) {
    for (let column = box.startColumn; column <= box.endColumn; column++) visit(row, column);
  }
}
