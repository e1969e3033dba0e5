import { InputError } from '../../shared/errors/InputError.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import type { SpillFunction, SpillResult } from '../../shared/functions/sheetFunctionTypes.ts';
import { MEASURES, type UnitSystem } from '../../shared/units/measures.ts';
import { UNITS } from '../../shared/units/units.ts';
import { type CellArgument, isBlankArgument, isRange } from './cellArgument.ts';
import { coerceArgument, type Shown, shownAnswer } from './coerceArgument.ts';
import { listArgument } from './listArgument.ts';

/** Rows that a table may spill; a chart needs no more. */
const MOST_ROWS = 500;

type Named = Readonly<Record<string, string | number | readonly number[]>>;

/**
 * Runs a function that takes lists whole: a row of headings, then its rows. Blank while every list is.
 * @throws InputError, in the user's unit, for the first argument that cannot be used
 */
export function runSpillFunction(
  declared: SpillFunction,
  args: readonly CellArgument[],
  system: UnitSystem,
): Shown | readonly (readonly Shown[])[] {
  const keys = Object.keys(declared.params);
  const lists = keys.filter((key) => declared.params[key]?.kind === 'list');
  const decisive = (lists.length > 0 ? lists : keys).map((key) => args[keys.indexOf(key)]);
  if (decisive.every(isBlank)) return '';
  const named = namedArguments(declared, args, system);
  const rows = declared.compute(named as never, system); // each value was coerced by its own declaration
  if (rows.length > MOST_ROWS)
    throw new InputError({
      field: 'number of rows',
      rule: { kind: 'at most', limit: MOST_ROWS },
      value: rows.length,
    });
  const columns = spilledColumns(declared, named);
  const headings = columns.map(({ name, measure }) => headingWords(name, measure, system));
  const shown = (row: readonly (string | number)[]) =>
    columns.map(({ measure }, index) => shownAnswer(row[index], measure, system));
  return [headings, ...rows.map(shown)];
}

function isBlank(value: CellArgument): boolean {
  return isRange(value) ? value.flat().every(isBlankArgument) : isBlankArgument(value);
}

function namedArguments(
  declared: SpillFunction,
  args: readonly CellArgument[],
  system: UnitSystem,
): Named {
  const named: Record<string, string | number | readonly number[]> = {};
  Object.entries(declared.params).forEach(([key, parameter], index) => {
    const field = fieldOf(key, parameter);
    const value = args[index];
    if (parameter.kind !== 'list') {
      named[key] = coerceArgument(singleCell(value, field), parameter, field, system);
      return;
    }
    const other = parameter.matches?.list;
    const matched = other === undefined ? undefined : matchedList(declared, named, other);
    named[key] = listArgument(value, parameter, { field, matched, system });
  });
  return named;
}

function matchedList(declared: SpillFunction, named: Named, key: string) {
  return { field: fieldOf(key, declared.params[key] ?? {}), count: itemsOf(named, key) };
}

function itemsOf(named: Named, key: string): number {
  const list = named[key];
  return Array.isArray(list) ? list.length : 0;
}

function singleCell(value: CellArgument, field: string): CellArgument {
  if (!isRange(value)) return value;
  const columns = value[0]?.length ?? 0;
  if (value.length === 1 && columns === 1) return value[0]?.[0];
  throw new InputError({
    field,
    rule: { kind: 'form', wanted: 'one cell' },
    value: `${value.length} × ${columns}`,
  });
}

function spilledColumns(declared: SpillFunction, named: Named): readonly SpillResult[] {
  const once = declared.returns.filter(({ perItemOf }) => perItemOf === undefined);
  const repeated = declared.returns.filter(({ perItemOf }) => perItemOf !== undefined);
  const count = Math.max(0, ...repeated.map(({ perItemOf = '' }) => itemsOf(named, perItemOf)));
  const perItem = Array.from({ length: count }, (_, item) =>
    repeated.map((result) => ({ ...result, name: `layer ${item + 1} ${result.name}` })),
  );
  return [...once, ...perItem.flat()];
}

function headingWords(name: string, measure: SpillResult['measure'], system: UnitSystem): string {
  const label = measure ? UNITS[MEASURES[measure][system]].label : '';
  return label ? `${name} (${label})` : name;
}
