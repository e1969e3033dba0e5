import { isErrorCell } from '../../shared/book/reading/isErrorCell.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import type { TableFunction } from '../../shared/functions/sheetFunctionTypes.ts';
import { workbook } from '../platform/workbook.ts';
import { type Cell, type CellArgument, isBlankArgument, isDate, isRange } from './cellArgument.ts';
import { coerceArgument, readSystem } from './coerceArgument.ts';

/** Runs a function that takes whole sheets as ranges, heading row first. */
export function runTableFunction(
  declared: TableFunction,
  args: readonly CellArgument[],
): readonly (readonly (string | number)[])[] {
  const keys = Object.keys(declared.params);
  const dayOf = declared.readsDays ? dayInWorkbook() : dayOfInstant;
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
    ranges[key] = value.map((row) => row.map((cell) => plain(cell, dayOf)));
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

type DayOf = (date: Date) => string;

/** Blank as "", a date as its day. */
function plain(cell: Cell, dayOf: DayOf): string | number | boolean {
  if (cell === null || cell === undefined) return '';
  return isDate(cell) ? dayOf(cell) : cell;
}

/** The day in universal time: enough for a plan made in a cell, which reads no day, only whether one is there. */
function dayOfInstant(date: Date): string {
  return date.toISOString().slice(0, 10);
}

/** The day in the workbook's own zone. The platform is asked once for each day, not for each cell. */
function dayInWorkbook(): DayOf {
  const days = new Map<number, string>();
  let zone: string | undefined;
  return (date) => {
    const instant = Number(date);
    const known = days.get(instant);
    if (known !== undefined) return known;
    zone ??= workbook().getSpreadsheetTimeZone();
    const day = Utilities.formatDate(new Date(instant), zone, 'yyyy-MM-dd');
    days.set(instant, day);
    return day;
  };
}
