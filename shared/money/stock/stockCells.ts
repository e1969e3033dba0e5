import type { MoneyBook } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import { trimmed } from '../../book/layout/tableCells.ts';
import { fromMinor, toMinor } from '../toMinor.ts';
import type { Ledger, MaterialStock } from './ledgerTypes.ts';
import { stockProblems } from './stockProblems.ts';
import { lotValues } from './stockValues.ts';

/** What the stock can be shown as in cells. */
export const STOCK_CELLS = ['materials', 'lots', 'counts', 'to mend'] as const;

type Shown = string | number;
type Rows = readonly (readonly Shown[])[];
type Book = Pick<MoneyBook, 'materials' | 'problems' | 'shop'>;

/** The stock as cells, headings first; money in the shop's currency. @param show one of {@link STOCK_CELLS} */
export function stockCells(show: string, stock: Ledger, book: Book): Rows {
  const moved = [...stock.stocks.values()].filter(({ moveCount }) => moveCount > 0);
  const { currency } = book.shop;
  const money = (amount: number) => fromMinor(toMinor(amount, currency), currency);
  switch (show) {
    case 'lots':
      return [
        ['Material', 'Lot', 'Bought on', 'Left', 'Unit', `Value (${currency})`],
        ...moved.flatMap((one) => {
          const minor = lotValues(one, currency);
          return one.lots.map(({ lot, date, left }, index) => {
            const value = fromMinor(minor[index] ?? 0, currency);
            return [one.material, lot, date, trimmed(left), one.unit ?? '', value];
          });
        }),
      ];
    case 'counts':
      return [
        ['Material', 'Date', 'Row', 'Expected', 'Counted', 'Unit', `Difference (${currency})`],
        ...moved.flatMap(({ material, unit = '', counts }) =>
          counts
            .filter(({ difference }) => difference !== 0)
            .map(({ date, row, expected, counted, value }) => {
              const amounts = [trimmed(expected), counted];
              return [material, date, row, ...amounts, unit, money(value)];
            }),
        ),
      ];
    case 'to mend':
      return [
        ['Sheet', 'Row', 'Heading', 'What'],
        ...stockProblems(stock, book).map(({ sheet, row = '', heading, text }) => [
          sheet,
          row,
          heading,
          text,
        ]),
      ];
    default:
      return materialRows(moved, book, money);
  }
}

function materialRows(
  moved: readonly MaterialStock[],
  { materials, shop }: Book,
  money: (amount: number) => number,
): Rows {
  const levels = new Map(
    materials.map(({ record: { material, reorderPoint, packSize } }) => {
      const isKnown = reorderPoint !== undefined && packSize !== undefined;
      return [nameKey(material), isKnown ? reorderPoint * packSize : undefined] as const;
    }),
  );
  const { currency } = shop;
  return [
    ['Material', 'On hand', 'Unit', `Value (${currency})`, `Average (${currency})`, 'Note'],
    ...moved.map(({ material, key, unit = '', onHand, value, average, negative }) => {
      const level = levels.get(key);
      const isLow = level !== undefined && onHand <= level;
      const below = negative ? `below nothing since row ${negative.row}` : '';
      const note = below || (isLow ? 'at or below its reorder point' : '');
      const rate = average === undefined ? '' : trimmed(average);
      return [material, trimmed(onHand), unit, money(value), rate, note];
    }),
  ];
}
