import { MONEY_TABLES, type MoneyCells, readMoneyBook } from '../../book/moneyBook.ts';
import { SHORT_CELLS, shortCells } from '../../money/stock/shortCells.ts';
import type { TableFunction } from '../defineFunction.ts';
import { sheetParameter } from './sheetParameter.ts';

/** What to buy for the open orders, from the whole book. */
export const POUR_SHORT: TableFunction = {
  kind: 'table',
  name: 'POUR_SHORT',
  family: 'book',
  about: 'What to buy: materials that the open orders outrun, and those at their reorder point.',
  params: {
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
    const cells: Record<string, MoneyCells['shop']> = { shop: ranges['shop'] ?? [] };
    for (const key of MONEY_TABLES) cells[key] = ranges[key] ?? [];
    // shop and every table were just set
    return shortCells(readMoneyBook(cells as MoneyCells), choices['which'] ?? '');
  },
};
