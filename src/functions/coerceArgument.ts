import { isErrorCell } from '../../shared/book/reading/isErrorCell.ts';
import { parseNumber } from '../../shared/book/reading/parseCell.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { typedChoice } from '../../shared/errors/typedChoice.ts';
import type { Answer, Parameter } from '../../shared/functions/sheetFunctionTypes.ts';
import { MEASURES, type MeasureName, type UnitSystem } from '../../shared/units/measures.ts';
import { fromEngine } from '../../shared/units/toEngine.ts';
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

/** The optional last argument of every sheet function. @throws InputError for anything but US or metric */
export function readSystem(value: CellArgument): UnitSystem {
  const cell = isRange(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value;
  if (isBlankArgument(cell)) return 'US';
  const text = String(cell).trim().toLowerCase();
  const system = SYSTEMS.find((one) => one.toLowerCase() === text);
  if (system === undefined)
    throw new InputError({
      field: 'units',
      rule: { kind: 'one of', choices: SYSTEMS },
      value: isRange(value) ? 'a range' : cell,
    });
  return system;
}

export type Shown = string | number;

/** An answer as its cell shows it: in the system's unit, blank where there is none, never a number that is not one. */
export function shownAnswer(
  answer: Answer | undefined,
  measure: MeasureName | undefined,
  system: UnitSystem,
): Shown {
  if (typeof answer !== 'number') return answer ?? '';
  if (!Number.isFinite(answer)) return 'no number answers this: check the inputs';
  return measure ? fromEngine(answer, MEASURES[measure][system]) : answer;
}

const SYSTEMS = ['US', 'metric'] as const;
