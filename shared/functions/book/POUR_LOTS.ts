import { trimmed } from '../../book/layout/tableCells.ts';
import { readTable } from '../../book/reading/readTable.ts';
import { TABLES } from '../../book/tables.ts';
import { ledger } from '../../money/stock/ledger.ts';
import { lotTrace } from '../../money/stock/lotTrace.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';
import { sheetParameter } from './sheetParameter.ts';

/** Where a lot went, and which lots are in an order. */
export const POUR_LOTS: TableFunction = {
  kind: 'table',
  name: 'POUR_LOTS',
  family: 'book',
  about: 'Which orders and runs contain a lot, or which lots are in an order or a run.',
  params: {
    name: { kind: 'text', about: 'A lot, an order number or a run.' },
    stockMoves: sheetParameter('Stock moves'),
    materials: sheetParameter('Materials'),
  },
  returns: [
    {
      name: 'table',
      about:
        'Headings, then one row for each move of the lot, or for the order or run; only headings where there is none.',
      kind: 'text',
    },
  ],
  notes:
    'A row of Stock moves that names no lot is reckoned to have taken the oldest, and the last column says so.',
  readsDays: true,
  compute: (ranges, choices) => {
    const moves = readTable(TABLES.stockMoves, ranges['stockMoves'] ?? []);
    const materials = readTable(TABLES.materials, ranges['materials'] ?? []);
    const trace = lotTrace(ledger(moves.rows, materials.rows), choices['name'] ?? '');
    const headings = ['Material', 'Lot', 'Order', 'Run', 'Reason', 'Amount', 'Unit', 'Date', 'Row'];
    return [
      [...headings, 'Lot is'],
      ...[...trace.ofLot, ...trace.ofOrder].map((line) => {
        const { material, lot, order, run, reason, amount, unit = '', date, row } = line;
        const sure = line.isLotNamed || reason === 'purchase' ? 'named' : 'the oldest';
        return [material, lot, order, run, reason, trimmed(amount), unit, date, row, sure];
      }),
    ];
  },
};
