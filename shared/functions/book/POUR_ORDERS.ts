import { ORDERS_COLUMNS, ordersColumn } from '../../plan/ordersColumn.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';
import { PLAN_SHEETS, readPlanSheets } from './planSheets.ts';

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
    ...PLAN_SHEETS,
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
    const { length } = ranges['orders'] ?? [];
    return ordersColumn(readPlanSheets(ranges), choices['column'] ?? '', length);
  },
};
