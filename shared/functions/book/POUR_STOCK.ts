import { readTable } from '../../book/reading/readTable.ts';
import { readShop } from '../../book/settings/readShop.ts';
import { TABLES } from '../../book/tables.ts';
import { ledger } from '../../money/stock/ledger.ts';
import { STOCK_CELLS, stockCells } from '../../money/stock/stockCells.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';
import { sheetParameter } from './sheetParameter.ts';

/** What is on hand, from every row of *Stock moves*. */
export const POUR_STOCK: TableFunction = {
  kind: 'table',
  name: 'POUR_STOCK',
  family: 'book',
  about: 'What is on hand of every material: amount, value, average price, lots, or rows to mend.',
  params: {
    show: {
      kind: 'choice',
      choices: STOCK_CELLS,
      about:
        'Materials with amount, value and average; lots, the oldest first; counts that differed; or rows to mend.',
      default: 'materials',
    },
    stockMoves: sheetParameter('Stock moves'),
    materials: sheetParameter('Materials'),
    shop: sheetParameter('Shop'),
  },
  returns: [
    {
      name: 'table',
      about:
        'Headings, then one row for each material that moved, each lot that is left, each count that differed, or each row to mend. Amounts in the pack unit.',
      kind: 'text',
    },
  ],
  notes:
    'Moves in date order, then in the order of the sheet. Value at the weighted average after each purchase (perpetual); of lots at what each was bought for, first in, first out. A count sets what is there. What was used before it was bought is reckoned at the last price and settled by the purchase.',
  readsDays: true,
  compute: (ranges, choices) => {
    const moves = readTable(TABLES.stockMoves, ranges['stockMoves'] ?? []);
    const materials = readTable(TABLES.materials, ranges['materials'] ?? []);
    const { shop } = readShop(ranges['shop'] ?? []);
    const book = { materials: materials.rows, problems: moves.problems, shop };
    return stockCells(choices['show'] ?? '', ledger(moves.rows, materials.rows), book);
  },
};
