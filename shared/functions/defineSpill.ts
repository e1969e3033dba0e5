import type { UnitSystem } from '../units/measures.ts';
import type {
  Answer,
  ArgumentOf,
  ListParameter,
  Parameter,
  SpillFunction,
} from './sheetFunctionTypes.ts';

type ListArguments<Ps> = {
  readonly [Key in keyof Ps]: Ps[Key] extends { readonly kind: 'list' }
    ? readonly number[]
    : ArgumentOf<Ps[Key]>;
};

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
