import { InputError } from '../../shared/errors/InputError.ts';
import type { TableFunction } from '../../shared/functions/defineFunction.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import { type Cell, type CellArgument, isDate, isRange } from './cellArgument.ts';
import { coerceArgument } from './coerceArgument.ts';
import { readSystem } from './readSystem.ts';

/** Runs a function that takes whole sheets as ranges, heading row first. */
export function runTableFunction(
  declared: TableFunction,
  args: readonly CellArgument[],
): readonly (readonly (string | number)[])[] {
  const keys = Object.keys(declared.params);
  const ranges: Record<string, readonly (readonly (string | number | boolean)[])[]> = {};
  const choices: Record<string, string> = {};
  keys.forEach((key, index) => {
    const parameter = declared.params[key];
    const value = args[index];
    if (parameter === undefined) return;
    const field = fieldOf(key, parameter);
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
    ranges[key] = value.map((row) => row.map(plain));
  });
  return declared.compute(ranges, choices, readSystem(args[keys.length]));
}

/** Blank as "", a date as its day in the script's own zone; a plan made in a cell reads no day, only whether one is there. */
function plain(cell: Cell): string | number | boolean {
  if (cell === null || cell === undefined) return '';
  return isDate(cell) ? cell.toISOString().slice(0, 10) : cell;
}
