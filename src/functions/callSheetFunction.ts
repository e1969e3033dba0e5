import { ALL_FUNCTIONS } from '../../shared/functions/allFunctions.ts';
import type { CellArgument } from './cellArgument.ts';
import { runFunction } from './runFunction.ts';

/** What every generated top-level sheet function calls: the declaration by name, through the one runner. */
export function callSheetFunction(
  name: string,
  args: ArrayLike<CellArgument>,
): string | number | readonly (readonly (string | number)[])[] {
  const declared = ALL_FUNCTIONS.find((one) => one.name === name);
  return declared ? runFunction(declared, Array.from(args)) : `no sheet function is called ${name}`;
}
