import { type CellContent, isDateMark } from '../cellContent.ts';
import { isObjectMark } from '../standIn/protocolTypes.ts';

/** Reads of arguments that throw, as the platform does, when a method is called with the wrong types. */

export function textArgument(args: readonly unknown[], index: number): string {
  const value = args[index];
  if (typeof value === 'string') return value;
  throw signatureError(args);
}

export function optionalTextArgument(args: readonly unknown[], index: number): string | undefined {
  return args[index] === undefined || args[index] === null ? undefined : textArgument(args, index);
}

export function integerArgument(args: readonly unknown[], index: number): number {
  const value = args[index];
  if (typeof value === 'number' && Number.isInteger(value)) return value;
  throw signatureError(args);
}

export function numberArgument(args: readonly unknown[], index: number): number {
  const value = args[index];
  if (typeof value === 'number') return value;
  throw signatureError(args);
}

export function optionalIntegerArgument(
  args: readonly unknown[],
  index: number,
): number | undefined {
  return args[index] === undefined || args[index] === null
    ? undefined
    : integerArgument(args, index);
}

export function booleanArgument(args: readonly unknown[], index: number): boolean {
  const value = args[index];
  if (typeof value === 'boolean') return value;
  throw signatureError(args);
}

/** What the object given as an argument points to. */
export function objectArgument<Ref>(args: readonly unknown[], index: number, object: string): Ref {
  const value = args[index];
  // The class was checked by its name; the stand-in made the reference.
  if (isObjectMark(value) && value.$object === object) return value.ref as Ref;
  throw signatureError(args);
}

export function arrayArgument(args: readonly unknown[], index: number): readonly unknown[] {
  const value = args[index];
  if (Array.isArray(value)) return value;
  throw signatureError(args);
}

/** A value for a cell; null clears it. */
export function cellContentOf(value: unknown): CellContent {
  if (value === null || value === undefined) return '';
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') {
    return value;
  }
  if (isDateMark(value)) return { $date: value.$date };
  throw new Error('A cell takes a number, text, a truth value or a date');
}

/**
 * Rows and columns as the platform counts them.
 *
 * @throws Error when the array is not exactly as large as the range
 */
export function matrixArgument(
  args: readonly unknown[],
  rows: number,
  columns: number,
): readonly (readonly unknown[])[] {
  const given = arrayArgument(args, 0);
  if (given.length !== rows) {
    throw new Error(
      `The number of rows in the data does not match the number of rows in the range. The data has ${given.length} but the range has ${rows}.`,
    );
  }
  return given.map((row) => {
    if (!Array.isArray(row)) throw signatureError(args);
    if (row.length !== columns) {
      throw new Error(
        `The number of columns in the data does not match the number of columns in the range. The data has ${row.length} but the range has ${columns}.`,
      );
    }
    return row;
  });
}

export function signatureError(args: readonly unknown[]): Error {
  const kinds = args.map((arg) => {
    if (isObjectMark(arg)) return `SpreadsheetApp.${arg.$object}`;
    return Array.isArray(arg) ? 'Array' : typeof arg;
  });
  return new Error(`The parameters (${kinds.join(',')}) don't match the method signature.`);
}
