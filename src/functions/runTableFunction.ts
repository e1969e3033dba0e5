import { isErrorCell } from '../../shared/book/reading/isErrorCell.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import type { TableFunction } from '../../shared/functions/sheetFunctionTypes.ts';
import { plainDates } from '../platform/plainDates.ts';
import { spreadsheetZone } from '../platform/workbook.ts';
import { type Cell, type CellArgument, isBlankArgument, isDate, isRange } from './cellArgument.ts';
import { coerceArgument, readSystem } from './coerceArgument.ts';

/** Runs a function that takes whole sheets as ranges, heading row first. */
export function runTableFunction(
  declared: TableFunction,
  args: readonly CellArgument[],
): readonly (readonly (string | number)[])[] {
  const keys = Object.keys(declared.params);
  const dateText = declared.readsDays ? plainDates(spreadsheetZone) : roughDates();
  const ranges: Record<string, readonly (readonly (string | number | boolean)[])[]> = {};
  const choices: Record<string, string> = {};
  keys.forEach((key, index) => {
    const parameter = declared.params[key];
    const value = args[index];
    if (parameter === undefined) return;
    const field = fieldOf(key, parameter);
    if (parameter.kind === 'text') {
      choices[key] = textArgument(value, field);
      return;
    }
    if (parameter.kind === 'choice') {
      choices[key] = String(coerceArgument(value, parameter, field, 'US'));
      return;
    }
    if (!isRange(value))
      throw new InputError({
        field,
        rule: {
          kind: 'form',
          wanted: `a range of the sheet ${parameter.sheet} with its heading row`,
        },
        value,
      });
    ranges[key] = value.map((row) => row.map((cell) => plain(cell, dateText)));
  });
  return declared.compute(ranges, choices, readSystem(args[keys.length]));
}

/** One cell as text; blank is refused. */
function textArgument(value: CellArgument, field: string): string {
  const cell = isRange(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value;
  if (isBlankArgument(cell)) throw new InputError({ field, rule: { kind: 'given' }, value: '' });
  if (isErrorCell(cell))
    throw new InputError({ field, rule: { kind: 'form', wanted: 'free of errors' }, value: cell });
  if (typeof cell === 'string' || typeof cell === 'number') return String(cell).trim();
  const got = isRange(cell) ? 'a range' : cell;
  throw new InputError({ field, rule: { kind: 'form', wanted: 'text in one cell' }, value: got });
}

type DateText = (date: Date) => string;

/** Blank as "", a date as its day or, where it is a time alone, as that. */
function plain(cell: Cell, dateText: DateText): string | number | boolean {
  if (cell === null || cell === undefined) return '';
  return isDate(cell) ? dateText(cell) : cell;
}

/** A time alone counts from the last days of 1899. */
const FIRST_DAY = Date.UTC(1900, 0, 1);

/**
 * Days in universal time: enough for a plan made in a cell, which reads no day, only whether one is there. A time alone is read in the
 * workbook's zone.
 */
function roughDates(): DateText {
  const exact = plainDates(spreadsheetZone);
  return (date) =>
    Number(date) < FIRST_DAY ? exact(date) : new Date(Number(date)).toISOString().slice(0, 10);
}
