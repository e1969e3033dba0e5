import type { Nullable } from '@univerjs/core';
import type { ArrayValueObject, BaseValueObject } from '@univerjs/engine-formula';
import { type CellContent, isDateMark, numberContent } from './cellContent.ts';
import type { SheetFunctions } from './engine.ts';
import { instantToSerial } from './parseDate.ts';
import { formula } from './univer.ts';

/** Where a sheet function is being calculated. */
export interface CallSite {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

type FunctionArgument = CellContent | null | readonly (readonly CellContent[])[];

export type FunctionOutcome =
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'failure'; readonly message: string };

/**
 * Runs a sheet function of the add-on; never throws, because a throw inside the engine would end the process.
 * `args` is the JSON of the list of arguments, with dates as marks.
 */
export type FunctionRunner = (name: string, args: string, site: CallSite) => FunctionOutcome;

/** Univer's executors for the add-on's sheet functions, and for ARRAYFORMULA, which here is the identity. */
export function sheetFunctions(
  names: readonly string[],
  zone: string,
  run: FunctionRunner,
): SheetFunctions {
  return [
    [identityFunction(), 'ARRAYFORMULA'],
    ...names.map((name) => [addOnFunction(name, zone, run), name.toUpperCase()] as const),
  ];
}

function identityFunction() {
  // Univer takes functions as classes.
  return class ArrayFormula extends formula.BaseFunction {
    override minParams = 1;
    override maxParams = 1;
    override calculate(value: BaseValueObject) {
      return value;
    }
  };
}

function addOnFunction(name: string, zone: string, run: FunctionRunner) {
  return class AddOnFunction extends formula.BaseFunction {
    override minParams = 0;
    override maxParams = 255;
    override calculate(...values: BaseValueObject[]) {
      const args = `[${values.map((value) => argumentText(value, zone)).join(',')}]`;
      const site = { sheet: this.subUnitId ?? '', row: this.row, column: this.column };
      const outcome = run(name, args, site);
      if (outcome.kind === 'failure') {
        return formula.ErrorValueObject.create(formula.ErrorType.ERROR, outcome.message);
      }
      return Array.isArray(outcome.value)
        ? block(outcome.value, zone)
        : single(outcome.value, zone);
    }
  };
}

/** The engine hands the same block to every function that names the same range: each is written out once. */
const written = new WeakMap<BaseValueObject, string>();

function argumentText(value: BaseValueObject, zone: string): string {
  const known = written.get(value);
  if (known !== undefined) return known;
  const text = JSON.stringify(argument(value, zone));
  if (isBlock(value)) written.set(value, text);
  return text;
}

/** One cell arrives as its value, a range as rows of values. */
function argument(value: BaseValueObject, zone: string): FunctionArgument {
  if (!isBlock(value)) return scalar(value, zone);
  const rows = Array.from({ length: value.getRowCount() }, (_row, row) =>
    Array.from({ length: value.getColumnCount() }, (_column, column) =>
      scalar(value.get(row, column), zone),
    ),
  );
  const [first, ...others] = rows;
  return first?.length === 1 && others.length === 0 ? (first[0] ?? '') : rows;
}

function isBlock(value: BaseValueObject): value is BaseValueObject & ArrayValueObject {
  return value.isArray();
}

function scalar(value: Nullable<BaseValueObject>, zone: string): CellContent {
  if (!value || value.isNull()) return '';
  const raw = value.getValue();
  if (typeof raw === 'number') return numberContent(raw, value.getPattern(), zone);
  return raw;
}

function block(values: readonly unknown[], zone: string) {
  // A flat list shows as one column.
  const rows = values.map((row) => (Array.isArray(row) ? row : [row]));
  const columns = Math.max(1, ...rows.map((row) => row.length));
  return formula.ArrayValueObject.create({
    calculateValueList: (rows.length ? rows : [['']]).map((row) =>
      Array.from({ length: columns }, (_value, column) => single(row[column], zone)),
    ),
    rowCount: Math.max(1, rows.length),
    columnCount: columns,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}

function single(value: unknown, zone: string): BaseValueObject {
  if (typeof value === 'number') {
    return Number.isFinite(value)
      ? formula.NumberValueObject.create(value)
      : formula.ErrorValueObject.create(formula.ErrorType.NUM);
  }
  if (typeof value === 'boolean') return formula.BooleanValueObject.create(value);
  if (isDateMark(value)) {
    return formula.NumberValueObject.create(instantToSerial(value.$date, zone), 'm/d/yyyy');
  }
  return formula.StringValueObject.create(
    value === null || value === undefined ? '' : String(value),
  );
}
