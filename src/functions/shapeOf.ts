import { InputError } from '../../shared/errors/InputError.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import type { RowFunction } from '../../shared/functions/sheetFunctionTypes.ts';
import { type CellArgument, isRange } from './cellArgument.ts';

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/**
 * The one shape of all arguments that are ranges, or undefined when every argument is a single cell.
 * @throws InputError when two ranges differ, or a function with several results gets a range wider than a column
 */
export function shapeOf(
  declared: RowFunction,
  keys: readonly string[],
  values: readonly CellArgument[],
): Shape | undefined {
  let shape: Shape | undefined;
  values.forEach((value, index) => {
    if (!isRange(value)) return;
    const key = keys[index] ?? '';
    const field = fieldOf(key, declared.params[key] ?? {});
    const rows = value.length;
    const columns = value[0]?.length ?? 0;
    if (shape && (shape.rows !== rows || shape.columns !== columns))
      throw new InputError({
        field,
        rule: { kind: 'form', wanted: `one cell or a range of ${shape.rows} × ${shape.columns}` },
        value: `${rows} × ${columns}`,
      });
    if (declared.returns.length > 1 && columns > 1)
      throw new InputError({
        field,
        rule: {
          kind: 'form',
          wanted: 'one cell or one column, since the answer fills several columns',
        },
        value: `${rows} × ${columns}`,
      });
    shape = { rows, columns };
  });
  return shape;
}
