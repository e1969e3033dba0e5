import { InputError } from '../../shared/errors/InputError.ts';
import { requireNumber } from '../../shared/errors/requireNumber.ts';
import { type ListParameter, MOST_ITEMS } from '../../shared/functions/sheetFunctionTypes.ts';
import { MEASURES, type UnitSystem } from '../../shared/units/measures.ts';
import { type Cell, type CellArgument, isBlankArgument, isRange } from './cellArgument.ts';
import { coerceArgument } from './coerceArgument.ts';

/** The list whose number of items another one must match. */
interface Matched {
  readonly field: string;
  readonly count: number;
}

/**
 * A column, a row or one cell as a list in engine units. Blanks at the end are left out.
 * @throws InputError that names the place of an item, the number of items, or a range wider than a column
 */
export function listArgument(
  value: CellArgument,
  parameter: ListParameter,
  { field, matched, system }: { field: string; matched?: Matched | undefined; system: UnitSystem },
): readonly number[] {
  const cells = trimmed(cellsOf(value, field));
  if (cells.length === 0) {
    if (parameter.optional) return [];
    const unit = parameter.measure && MEASURES[parameter.measure][system];
    throw new InputError({ field, rule: { kind: 'given' }, value: '', unit });
  }
  requireNumber(cells.length, `number of ${field}`, { atMost: parameter.most ?? MOST_ITEMS });
  const { item, measure, bounds } = parameter;
  const one = { kind: 'number', about: '', bounds, ...(measure && { measure }) } as const;
  // An item that its own declaration made a number.
  const coerce = (cell: Cell, name: string) => coerceArgument(cell, one, name, system) as number;
  if (matched === undefined)
    return cells.map((cell, index) => coerce(cell, `${item} ${index + 1}`));
  const wanted = matched.count - (parameter.matches?.less ?? 0);
  if (parameter.oneForAll && cells.length === 1)
    return Array<number>(wanted).fill(coerce(cells[0], item));
  if (cells.length !== wanted)
    throw wrongCount(cells.length, parameter, { field, matched, wanted });
  return cells.map((cell, index) => coerce(cell, `${item} ${index + 1}`));
}

function cellsOf(value: CellArgument, field: string): readonly Cell[] {
  if (!isRange(value)) return [value];
  const columns = value[0]?.length ?? 0;
  if (value.length > 1 && columns > 1)
    throw new InputError({
      field,
      rule: { kind: 'form', wanted: 'one column or one row' },
      value: `${value.length} × ${columns}`,
    });
  return value.flat();
}

function trimmed(cells: readonly Cell[]): readonly Cell[] {
  let end = cells.length;
  while (end > 0 && isBlankArgument(cells[end - 1])) end -= 1;
  return cells.slice(0, end);
}

function wrongCount(
  count: number,
  { matches, oneForAll }: ListParameter,
  { field, matched, wanted }: { field: string; matched: Matched; wanted: number },
): InputError {
  const than = matches?.less ? 'one fewer than' : 'as many as';
  const numbers = wanted === 1 ? '1 number' : `${wanted} numbers`;
  const all = oneForAll ? ', or one for all' : '';
  const rule = { kind: 'form', wanted: `${numbers}, ${than} ${matched.field}${all}` } as const;
  return new InputError({ field, rule, value: count });
}
