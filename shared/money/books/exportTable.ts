import type { BooksBook } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import { EXCISE_SOURCE } from '../excise/exciseText.ts';
import { ledger } from '../stock/ledger.ts';
import { fromMinor } from '../toMinor.ts';
import type { Books, Sale } from './booksTypes.ts';
import { closedMonths } from './closedMonths.ts';
import { exciseEntries } from './exciseEntries.ts';

export const EXPORTS = ['sales', 'stock moves', 'excise sales'] as const;
export type ExportName = (typeof EXPORTS)[number];

/** A table for another program: texts are texts, amounts and dates as `12.5` and `2026-11-30`; blank is "". */
export interface ExportTable {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** One of the tables that the bookkeeper takes along; money in the workbook's currency. */
export function exportTable(book: BooksBook, now: Books, name: ExportName): ExportTable {
  switch (name) {
    case 'sales':
      return salesTable(now);
    case 'stock moves':
      return movesTable(book, now);
    case 'excise sales':
      return exciseTable(book, now);
  }
}

function salesTable({ sales, currency }: Books): ExportTable {
  const amount = (minor: number) => fromMinor(minor, currency);
  const amounts = ({ goods, excise, sales: net, shipping, salesTax, total }: Sale) =>
    [goods, excise.inside, excise.added, net, shipping, salesTax, total].map(amount);
  return {
    headings: [
      ...['Order', 'Shipped on', 'Customer', 'Mold', 'Pattern', 'Pieces'],
      ...['Price agreed', 'Excise inside', 'Excise added', 'Net sales'],
      ...['Shipping', 'Sales tax', 'Total', 'Stock used', 'Materials as planned'],
      ...['Work and overhead', 'Cost of goods', 'Margin', 'Cost is', 'Currency'],
    ],
    rows: sales.map((sale) => {
      const { stock, unposted, making, total, basis } = sale.cost;
      return [
        ...[sale.order, sale.day, sale.customer, sale.mold, sale.pattern, sale.pieces ?? ''],
        ...amounts(sale),
        ...[stock, unposted, making, total, sale.margin].map(amount),
        ...[basis, currency],
      ];
    }),
  };
}

/** Every row of *Stock moves*; a row that could not be posted has no change and no cost. */
function movesTable({ stockMoves, materials }: BooksBook, { currency }: Books): ExportTable {
  const { moves, stocks } = ledger(stockMoves, materials);
  const posted = new Map(moves.map((move) => [move.row, move]));
  return {
    headings: [
      ...['Row', 'Date', 'Material', 'Lot', 'Amount', 'Unit', 'Reason', 'Order', 'Run', 'Paid'],
      ...['Change of stock', 'Cost at average', 'Currency', 'Entry', 'Notes'],
    ],
    rows: stockMoves.map(({ row, record }) => {
      const { material = '', lot = '', amount = '', reason = '', order = '', run = '' } = record;
      const { money = '', entry = '', notes = '' } = record;
      const move = posted.get(row);
      const date = move?.date ?? record.date ?? '';
      const unit = stocks.get(nameKey(material))?.unit ?? '';
      const cost = move === undefined ? '' : plain(move.cost);
      const change = move === undefined ? '' : plain(move.change);
      return [
        ...[row, date, material, lot, amount, unit, reason, order, run, money],
        ...[change, cost, currency, entry, notes],
      ];
    }),
  };
}

/** Without the last binary digits, so that sums of decimals read as decimals. */
function plain(value: number): number {
  return Number(value.toPrecision(12));
}

function exciseTable(book: BooksBook, { sales, day, currency }: Books): ExportTable {
  const amount = (minor: number) => fromMinor(minor, currency);
  const entries = exciseEntries(sales, closedMonths(book).closed, day);
  return {
    headings: [
      ...['Order', 'Day', 'Corrects sale of', 'Price', 'Status', 'Taxed on', 'Rate', 'Tax'],
      ...['Currency', 'Caution'],
    ],
    rows: entries.map(({ order, day: entered, corrects = '', price, excise }) => [
      ...[order, entered, corrects, amount(price), excise.reason],
      ...[amount(excise.base), excise.rate, amount(excise.tax), currency, EXCISE_SOURCE],
    ]),
  };
}
