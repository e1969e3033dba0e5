import { describeIn } from '../../shared/errors/describeIn.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import type { Answer, RowFunction, SheetFunction } from '../../shared/functions/defineFunction.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import { fromEngine } from '../../shared/units/convert.ts';
import { MEASURES, type UnitSystem } from '../../shared/units/measures.ts';
import { type CellArgument, isBlankArgument, isRange } from './cellArgument.ts';
import { coerceArgument } from './coerceArgument.ts';
import { readSystem } from './readSystem.ts';
import { runTableFunction } from './runTableFunction.ts';
import { shapeOf } from './shapeOf.ts';

type Shown = string | number;

/**
 * Runs a sheet function as a cell calls it: every argument a cell or a range, ranges of one shape, the system last.
 * A bad row answers with its sentence; the other rows are computed. A row whose ranges are all blank stays blank.
 * @returns a value, or rows by columns for a spill
 */
export function runFunction(
  declared: SheetFunction,
  args: readonly CellArgument[],
): Shown | readonly (readonly Shown[])[] {
  try {
    if (declared.kind === 'table') return runTableFunction(declared, args);
    return spread(declared, args);
  } catch (error) {
    return sentence(error, 'US');
  }
}

function spread(
  declared: RowFunction,
  args: readonly CellArgument[],
): Shown | readonly (readonly Shown[])[] {
  const keys = Object.keys(declared.params);
  if (args.length > keys.length + 1)
    throw new InputError({
      field: 'number of arguments',
      rule: { kind: 'at most', limit: keys.length + 1 },
      value: args.length,
    });
  const system = readSystem(args[keys.length]);
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
    return declared.returns.map((result, index) => shown(answers[index], result.measure, system));
  } catch (error) {
    return [sentence(error, system), ...blank.slice(1)];
  }
}

function shown(
  answer: Answer | undefined,
  measure: keyof typeof MEASURES | undefined,
  system: UnitSystem,
): Shown {
  if (typeof answer !== 'number') return answer ?? '';
  if (!Number.isFinite(answer)) return 'no number answers this: check the inputs';
  return measure ? fromEngine(answer, MEASURES[measure][system]) : answer;
}

function sentence(error: unknown, system: UnitSystem): string {
  if (error instanceof InputError) return describeIn(error, system);
  throw error;
}
