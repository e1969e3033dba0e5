import { SHORT_CELLS, shortCells } from '../../money/stock/shortCells.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';
import { MONEY_SHEETS, readMoneySheets } from './planSheets.ts';

/** What to buy for the open orders, from the whole book. */
export const POUR_SHORT: TableFunction = {
  kind: 'table',
  name: 'POUR_SHORT',
  family: 'book',
  about: 'What to buy: materials that the open orders outrun, and those at their reorder point.',
  params: {
    ...MONEY_SHEETS,
    which: {
      kind: 'choice',
      choices: SHORT_CELLS,
      about: 'Orders that are accepted or planned, or those that were only asked for too.',
      default: 'accepted',
    },
  },
  returns: [
    {
      name: 'table',
      about:
        'Headings, then one row for each material to buy, by supplier: on hand, needed, short, the first order it does not reach for, whole packs, money.',
      kind: 'text',
    },
  ],
  notes:
    'Open orders by due date, each with what its plan takes less what was used for it already. Packs cover the orders and bring what is left above the reorder point. An order without a plan, or a material that cannot be counted, stands at the end with its reason.',
  readsDays: true,
  compute: (ranges, choices) => {
    return shortCells(readMoneySheets(ranges), choices['which'] ?? '');
  },
};
