import { MONEY_COLUMNS, moneyColumn } from '../../money/moneyColumn.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';
import { MONEY_SHEETS, readMoneySheets } from './planSheets.ts';

/** One money column of *Orders*, heading and all rows, from the whole book. */
export const POUR_MONEY: TableFunction = {
  kind: 'table',
  name: 'POUR_MONEY',
  family: 'book',
  about:
    'One column of Orders about money: the heading, then one cell for each order row. Set-up puts it into the heading cell.',
  params: {
    column: {
      kind: 'choice',
      choices: MONEY_COLUMNS,
      about: 'Which column, by its heading.',
    },
    ...MONEY_SHEETS,
  },
  returns: [
    {
      name: 'column',
      about:
        'The heading, then an amount in the shop’s currency, a share or sentences for each order; blank where the row is blank or has no plan.',
      kind: 'text',
    },
  ],
  notes:
    'The cost is that of the plan behind the run sheet: plastisol and colorants at the weighted average of Stock moves, or the pack price in Materials where nothing was bought; supplies of the pieces ordered; work at the labor rate; electricity; mold wear; overhead. The quote price reaches the target margin of Shop with every charge and discount, without shipping and sales tax. The margin is that of the agreed price, or of the quote price where none is agreed. What is not known counts as 0 and stands in Money notes.',
  compute: (ranges, choices) => {
    const { length } = ranges['orders'] ?? [];
    return moneyColumn(readMoneySheets(ranges), choices['column'] ?? '', length);
  },
};
