import { BOND_CELLS, bondCells } from '../../outcomes/bond/bondCells.ts';
import { PLAN_SHEETS, readPlanSheets } from '../book/planSheets.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';

/** The shop's own bond temperature, from the whole book. */
export const POUR_BOND_FIT: TableFunction = {
  kind: 'table',
  name: 'POUR_BOND_FIT',
  family: 'quality',
  about: 'Bond temperature from the tear tests of the log: the fit, or the joints it comes from.',
  params: {
    what: {
      kind: 'choice',
      choices: BOND_CELLS,
      about: 'The fitted figure, or one row for each torn joint for the sheet’s own charts.',
      default: 'fit',
    },
    ...PLAN_SHEETS,
  },
  returns: [
    {
      name: 'table',
      about:
        'Headings, then the contact temperature at which half of the joints bond with its limits and what to make of it; or row, run, layers, contact temperature and tear test of each joint.',
      kind: 'text',
    },
  ],
  notes:
    'Contact temperatures come from the layer solver, run on each row’s own readings; the chance to bond is a logistic curve of them, fitted by Firth’s method, with 90 % limits from the penalized profile. Six joints and two of each outcome at least; with one outcome only it gives a limit in words. The last 300 tested rows; not those of two-piece molds. The panel puts the figure in use and takes it back.',
  compute: (ranges, choices) => {
    return bondCells(readPlanSheets(ranges), choices['what'] ?? '');
  },
};
