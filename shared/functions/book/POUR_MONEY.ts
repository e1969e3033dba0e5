import { MONEY_TABLES, type MoneyCells, readMoneyBook } from '../../book/moneyBook.ts';
import { MONEY_COLUMNS, moneyColumn } from '../../money/moneyColumn.ts';
import type { TableFunction } from '../defineFunction.ts';
import { sheetParameter } from './sheetParameter.ts';

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
    orders: sheetParameter('Orders'),
    molds: sheetParameter('Molds'),
    patterns: sheetParameter('Patterns'),
    doses: sheetParameter('Doses'),
    materials: sheetParameter('Materials'),
    plates: sheetParameter('Plates'),
    pourLog: sheetParameter('Pour log'),
    supplies: sheetParameter('Supplies'),
    stockMoves: sheetParameter('Stock moves'),
    shop: sheetParameter('Shop'),
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
    const cells: Record<string, MoneyCells['shop']> = { shop: ranges['shop'] ?? [] };
    for (const key of MONEY_TABLES) cells[key] = ranges[key] ?? [];
    const { length } = cells['orders'] ?? [];
    // shop and every table were just set
    return moneyColumn(readMoneyBook(cells as MoneyCells), choices['column'] ?? '', length);
  },
};
