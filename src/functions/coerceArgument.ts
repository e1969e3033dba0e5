import { isErrorCell } from '../../shared/book/reading/isErrorCell.ts';
import { parseNumber } from '../../shared/book/reading/parseCell.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { typedChoice } from '../../shared/errors/typedChoice.ts';
import type { Parameter } from '../../shared/functions/defineFunction.ts';
import { MEASURES, type UnitSystem } from '../../shared/units/measures.ts';
import { type CellArgument, isBlankArgument, isRange } from './cellArgument.ts';

/**
 * One argument of one row in engine units: the default where blank, else checked against its bounds in the user's unit.
 * @throws InputError in the user's unit
 */
export function coerceArgument(
  cell: CellArgument,
  parameter: Parameter,
  field: string,
  system: UnitSystem,
): string | number {
  const unit =
    parameter.kind === 'number' && parameter.measure
      ? MEASURES[parameter.measure][system]
      : undefined;
  const facts = unit ? { field, unit } : { field };
  if (isBlankArgument(cell)) {
    if (parameter.default !== undefined) return parameter.default;
    throw new InputError({ ...facts, rule: { kind: 'given' }, value: '' });
  }
  if (isErrorCell(cell))
    throw new InputError({
      ...facts,
      rule: { kind: 'form', wanted: 'free of errors' },
      value: cell,
    });
  if (parameter.kind === 'choice') return typedChoice(cell, field, parameter.choices);
  if (isRange(cell) || typeof cell === 'object' || cell === undefined || typeof cell === 'boolean')
    throw new InputError({ ...facts, rule: { kind: 'number' }, value: cell });
  return parseNumber(cell, field, parameter.bounds, unit);
}
