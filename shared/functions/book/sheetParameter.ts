import type { TableParameter } from '../sheetFunctionTypes.ts';

/** A parameter that takes a whole sheet of the book. */
export function sheetParameter(name: TableParameter['sheet']): TableParameter {
  return {
    kind: 'table',
    sheet: name,
    about: `The sheet ${name} from its heading row down, its typed columns only.`,
  };
}
