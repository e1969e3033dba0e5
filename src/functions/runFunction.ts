import { describeIn } from '../../shared/errors/describeIn.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { requireNumber } from '../../shared/errors/requireNumber.ts';
import { ALL_FUNCTIONS } from '../../shared/functions/allFunctions.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import type {
  RowFunction,
  SheetFunction,
  SpillFunction,
} from '../../shared/functions/sheetFunctionTypes.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { type CellArgument, isBlankArgument, isRange } from './cellArgument.ts';
import { coerceArgument, readSystem, type Shown, shownAnswer } from './coerceArgument.ts';
import { runSpillFunction } from './runSpillFunction.ts';
import { runTableFunction } from './runTableFunction.ts';
import { shapeOf } from './shapeOf.ts';

/**
 * Runs a sheet function as a cell calls it, the system last. Row by row: every argument a cell or a range, ranges of one
 * shape; a bad row answers with its sentence, the other rows are computed, a row whose ranges are all blank stays blank.
 * A function that takes lists or sheets answers as a whole, or with one sentence.
 * @returns a value, or rows by columns for a spill
 */
export function runFunction(
  declared: SheetFunction,
  args: readonly CellArgument[],
): Shown | readonly (readonly Shown[])[] {
  try {
    if (declared.kind === 'table') return runTableFunction(declared, args);
    const count = Object.keys(declared.params).length;
    requireNumber(args.length, 'number of arguments', { atMost: count + 1 });
    const system = readSystem(args[count]);
    return declared.kind === 'row' ? spread(declared, args, system) : spill(declared, args, system);
  } catch (error) {
    return sentence(error, 'US');
  }
}

function spill(
  declared: SpillFunction,
  args: readonly CellArgument[],
  system: UnitSystem,
): Shown | readonly (readonly Shown[])[] {
  try {
    return runSpillFunction(declared, args, system);
  } catch (error) {
    return sentence(error, system);
  }
}

function spread(
  declared: RowFunction,
  args: readonly CellArgument[],
  system: UnitSystem,
): Shown | readonly (readonly Shown[])[] {
  const keys = Object.keys(declared.params);
  const values = keys.map((_, index) => args[index]);
  const shape = shapeOf(declared, keys, values);
  if (shape === undefined) {
    const answer = answerRow(declared, keys, values, values, system);
    return answer.length === 1 ? (answer[0] ?? '') : [answer];
  }
  const rows: (readonly Shown[])[] = [];
  for (let row = 0; row < shape.rows; row++) {
    const line: Shown[] = [];
    for (let column = 0; column < shape.columns; column++) {
      const cells = values.map((value) => (isRange(value) ? value[row]?.[column] : value));
      line.push(...answerRow(declared, keys, cells, values, system));
    }
    rows.push(line);
  }
  return rows;
}

function answerRow(
  declared: RowFunction,
  keys: readonly string[],
  cells: readonly CellArgument[],
  given: readonly CellArgument[],
  system: UnitSystem,
): readonly Shown[] {
  const blank = declared.returns.map(() => '');
  const varying = cells.filter((_, index) => isRange(given[index]));
  if ((varying.length > 0 ? varying : cells).every(isBlankArgument)) return blank;
  try {
    const named: Record<string, string | number> = {};
    keys.forEach((key, index) => {
      const parameter = declared.params[key];
      if (parameter)
        named[key] = coerceArgument(cells[index], parameter, fieldOf(key, parameter), system);
    });
    const answers = declared.compute(named as never, system); // each value was coerced by its own declaration
    return declared.returns.map((result, index) =>
      shownAnswer(answers[index], result.measure, system),
    );
  } catch (error) {
    return [sentence(error, system), ...blank.slice(1)];
  }
}

function sentence(error: unknown, system: UnitSystem): string {
  if (error instanceof InputError) return describeIn(error, system);
  throw error;
}

/** What every generated top-level sheet function calls: the declaration by name, through the one runner. */
export function callSheetFunction(
  name: string,
  args: ArrayLike<CellArgument>,
): string | number | readonly (readonly (string | number)[])[] {
  const declared = ALL_FUNCTIONS.find((one) => one.name === name);
  return declared ? runFunction(declared, Array.from(args)) : `no sheet function is called ${name}`;
}
