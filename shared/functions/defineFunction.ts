import type { UnitSystem } from '../units/measures.ts';
import type { Answer, ArgumentOf, Parameter, RowFunction } from './sheetFunctionTypes.ts';

type ArgumentsOf<Ps> = { readonly [Key in keyof Ps]: ArgumentOf<Ps[Key]> };

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
