import type { Bounds } from '../errors/requireNumber.ts';
import type { MeasureName, UnitSystem } from '../units/measures.ts';
import type {
  Answer,
  ArgumentOf,
  Family,
  Parameter,
  ParameterBase,
  Result,
} from './defineFunction.ts';

/** Items of a list that says nothing else. */
export const MOST_ITEMS = 500;

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

type ListArguments<Ps> = {
  readonly [Key in keyof Ps]: Ps[Key] extends { readonly kind: 'list' }
    ? readonly number[]
    : ArgumentOf<Ps[Key]>;
};

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

/**
 * Declares a sheet function that takes lists whole and spills a table below one row of headings with units. `compute` gets
 * engine units and returns rows, numbers in engine units, columns in the order of `returns`, those per item side by side
 * for the first item, then for the second.
 */
export function defineSpill<const Ps extends Readonly<Record<string, Parameter | ListParameter>>>(
  declaration: Omit<SpillFunction, 'kind' | 'params' | 'compute'> & {
    readonly params: Ps;
    readonly compute: (
      args: ListArguments<Ps>,
      system: UnitSystem,
    ) => readonly (readonly Answer[])[];
  },
): SpillFunction {
  return { kind: 'spill', ...declaration };
}
