import type { MoneyBook } from '../../book/book.ts';
import { trimmed } from '../../book/layout/tableCells.ts';
import { fromMinor } from '../toMinor.ts';
import { ledger } from './ledger.ts';
import { openNeeds, type WhichOrders } from './openNeeds.ts';
import { purchaseList } from './purchaseList.ts';
import { shortfall } from './shortfall.ts';

/** Which orders are reckoned with. */
export const SHORT_CELLS = ['accepted', 'asked too'] as const satisfies readonly WhichOrders[];

/** The purchase list as cells, headings first. @param which one of {@link SHORT_CELLS} */
export function shortCells(
  book: MoneyBook,
  which: string,
): readonly (readonly (string | number)[])[] {
  const { currency } = book.shop;
  const stock = ledger(book.stockMoves, book.materials);
  const { needs, uncounted } = openNeeds(book, which === 'asked too' ? which : 'accepted');
  const { lines } = purchaseList(shortfall(needs, stock, book.materials), currency);
  return [
    [
      'Material',
      'Supplier',
      'On hand',
      'Needed',
      'Short',
      'Unit',
      'Short from order',
      'Due',
      'Packs',
      `Money (${currency})`,
      'Note',
    ],
    ...lines.map((line) => {
      const { material, supplier, unit = '', shortFrom, packs, money, noPacks } = line;
      return [
        material,
        supplier,
        trimmed(line.onHand),
        trimmed(line.needed),
        shortFrom ? trimmed(-line.free) : 0,
        unit,
        shortFrom?.order ?? '',
        shortFrom?.due ?? '',
        packs,
        money === undefined ? '' : fromMinor(money, currency),
        noPacks ?? (line.isLow ? 'at or below its reorder point after the open orders' : ''),
      ];
    }),
    ...uncounted.map(({ order, text }) => [
      ...Array<string>(6).fill(''),
      order,
      ...Array<string>(3).fill(''),
      `not counted: ${text}`,
    ]),
  ];
}
