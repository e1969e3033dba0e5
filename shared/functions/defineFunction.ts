import type { SheetName } from '../book/column.ts';
import type { Bounds } from '../errors/requireNumber.ts';
import type { MeasureName, UnitSystem } from '../units/measures.ts';
export type Family = 'batch' | 'heat' | 'trials' | 'quality' | 'day' | 'money' | 'book';

export interface ParameterBase {
  /** One plain sentence, without the unit. */
  readonly about: string;
  /** The words in messages when the key alone will not do; the key in words otherwise. */
  readonly field?: string;
}

/** A number in the user's unit; bounds and default are in engine units. */
interface NumberParameter extends ParameterBase {
  readonly kind: 'number';
  readonly measure?: MeasureName;
  readonly bounds: Bounds;
  readonly default?: number;
}

interface ChoiceParameter extends ParameterBase {
  readonly kind: 'choice';
  readonly choices: readonly string[];
  readonly default?: string;
}

/** A whole sheet's range, heading row first. Only in functions of kind `table`. */
export interface TableParameter extends ParameterBase {
  readonly kind: 'table';
  readonly sheet: SheetName | 'Shop';
}

/** Any text in one cell, such as an order’s number. Only in functions of kind `table`. */
interface TextParameter extends ParameterBase {
  readonly kind: 'text';
}

export type Parameter = NumberParameter | ChoiceParameter;

/** One column of a result. */
export interface Result {
  readonly name: string;
  readonly about: string;
  /** For numbers: what is measured; the cell gets the unit of the system asked for. */
  readonly measure?: MeasureName;
  readonly kind: 'number' | 'text';
}

/** A call as a person would type it, in user units, with its shown result. */
export interface Example {
  readonly args: readonly (string | number)[];
  readonly result: string | number | readonly (string | number)[];
  /** Relative tolerance for numbers, with its reason in `source`; exact when absent. */
  readonly within?: number;
  /** A key of tests/sources.ts with the place, or `common practice, no source`, or how the value was made. */
  readonly source: string;
}

export type ArgumentOf<P> = P extends {
  readonly kind: 'choice';
  readonly choices: readonly (infer C)[];
}
  ? C
  : number;

type ArgumentsOf<Ps> = { readonly [Key in keyof Ps]: ArgumentOf<Ps[Key]> };

export type Answer = number | string;

export interface RowFunction {
  readonly kind: 'row';
  readonly name: string;
  readonly family: Family;
  readonly about: string;
  readonly params: Readonly<Record<string, Parameter>>;
  readonly returns: readonly Result[];
  readonly examples: readonly Example[];
  /** Where the formula comes from and where it stops being valid, in one or two sentences. */
  readonly notes: string;
  readonly compute: (args: never, system: UnitSystem) => readonly Answer[];
}

export interface TableFunction {
  readonly kind: 'table';
  readonly name: string;
  readonly family: Family;
  readonly about: string;
  readonly params: Readonly<Record<string, TableParameter | ChoiceParameter | TextParameter>>;
  readonly returns: readonly Result[];
  readonly notes: string;
  /** Its answer depends on the days of date cells, so they are those of the workbook’s zone. */
  readonly readsDays?: true;
  /** Texts stand among the choices. */
  readonly compute: (
    ranges: Readonly<Record<string, readonly (readonly (string | number | boolean)[])[]>>,
    choices: Readonly<Record<string, string>>,
    system: UnitSystem,
  ) => readonly (readonly Answer[])[];
}

/**
 * Declares a sheet function that works row by row. `compute` gets named, converted, checked values in engine units and
 * returns one answer per column of `returns`, numbers in engine units; the system is for figures inside a text answer. Its stub, doc comment, manual page, checks and
 * examples all come from this.
 */
export function defineFunction<const Ps extends Readonly<Record<string, Parameter>>>(
  declaration: Omit<RowFunction, 'kind' | 'params' | 'compute'> & {
    readonly params: Ps;
    readonly compute: (args: ArgumentsOf<Ps>, system: UnitSystem) => readonly Answer[];
  },
): RowFunction {
  return { kind: 'row', ...declaration };
}
