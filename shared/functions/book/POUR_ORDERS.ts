import { type BookCells, PLAN_TABLES, readBook } from '../../book/book.ts';
import { ORDERS_COLUMNS, ordersColumn } from '../../runSheet/ordersColumn.ts';
import type { TableFunction } from '../defineFunction.ts';
import { sheetParameter } from './sheetParameter.ts';

/** One computed column of *Orders*, heading and all rows, from the whole book. */
export const POUR_ORDERS: TableFunction = {
  kind: 'table',
  name: 'POUR_ORDERS',
  family: 'book',
  about:
    'One computed column of Orders: the heading, then one cell for each order row. Set-up puts it into the heading cell.',
  params: {
    column: {
      kind: 'choice',
      choices: ORDERS_COLUMNS,
      about: 'Which column, by its heading without the unit.',
    },
    orders: sheetParameter('Orders'),
    molds: sheetParameter('Molds'),
    patterns: sheetParameter('Patterns'),
    doses: sheetParameter('Doses'),
    materials: sheetParameter('Materials'),
    plates: sheetParameter('Plates'),
    pourLog: sheetParameter('Pour log'),
    shop: sheetParameter('Shop'),
  },
  returns: [
    {
      name: 'column',
      about:
        'The heading, then a value, a clock time or a sentence for each order; blank where the row is blank or something is missing.',
      kind: 'text',
    },
  ],
  notes:
    'The plan behind the run sheet, row by row. Units are those of the sheet Shop. Where something is missing the figures stay blank and Warnings says what and where.',
  compute: (ranges, choices) => {
    const cells: Record<string, BookCells['shop']> = { shop: ranges['shop'] ?? [] };
    for (const key of PLAN_TABLES) cells[key] = ranges[key] ?? [];
    const { length } = cells['orders'] ?? [];
    // shop and every plan table were just set
    return ordersColumn(readBook(cells as BookCells), choices['column'] ?? '', length);
  },
};
