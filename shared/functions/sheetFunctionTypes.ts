import type { SheetName } from '../book/column.ts';
import type { Bounds } from '../errors/requireNumber.ts';
import type { MeasureName, UnitSystem } from '../units/measures.ts';
export type SheetFunction = RowFunction | TableFunction | SpillFunction;

type Family = 'batch' | 'heat' | 'trials' | 'quality' | 'day' | 'money' | 'book';

interface ParameterBase {
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
interface Result {
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

/** A column or a row taken whole, or one cell; blanks at its end do not count. Bounds are in engine units. */
export interface ListParameter extends ParameterBase {
  readonly kind: 'list';
  /** One of it in messages: `layer thickness` gives `layer thickness 2 must be …` */
  readonly item: string;
  readonly measure?: MeasureName;
  readonly bounds: Bounds;
  /** How many it may hold when no other list sets their number; {@link MOST_ITEMS} when left out. */
  readonly most?: number;
  /** As many as that list has, or one fewer where it holds what lies between two. */
  readonly matches?: { readonly list: string; readonly less?: 1 };
  /** One cell serves every place of the list that it matches. */
  readonly oneForAll?: true;
  /** Blank is an empty list. */
  readonly optional?: true;
}

/** One column of a spilled table, or one for each item of a list. */
export interface SpillResult extends Result {
  /** The list whose every item has this column, under the heading `layer 1 mean`. */
  readonly perItemOf?: string;
}

/** A call as a person would type it, with the rows shown below the headings. */
interface SpillExample {
  /** A list is typed as a column in braces. */
  readonly args: readonly (string | number | readonly (string | number)[])[];
  readonly result: readonly (readonly Answer[])[];
  readonly within?: number;
  readonly source: string;
}

export interface SpillFunction {
  readonly kind: 'spill';
  readonly name: string;
  readonly family: Family;
  readonly about: string;
  readonly params: Readonly<Record<string, Parameter | ListParameter>>;
  readonly returns: readonly SpillResult[];
  readonly examples: readonly SpillExample[];
  readonly notes: string;
  readonly compute: (args: never, system: UnitSystem) => readonly (readonly Answer[])[];
}

/** Items of a list that says nothing else. */
export const MOST_ITEMS = 500;
