import type { MoneyBook } from '../../book/book.ts';
import type { Missing } from '../../book/missingCells.ts';
import { describe } from '../../errors/describe.ts';
import type { Ledger } from './ledgerTypes.ts';

/** What the ledger found, and what the sheet's reading refused; the refusal says more than "must be given". */
export function stockProblems(
  stock: Ledger,
  book: Pick<MoneyBook, 'problems'>,
): readonly Missing[] {
  const refused = book.problems
    .filter(({ sheet }) => sheet === 'Stock moves')
    .map(({ sheet, row, heading, error }): Missing => {
      const text = describe(error);
      return row === undefined ? { sheet, heading, text } : { sheet, row, heading, text };
    });
  const places = new Set(refused.map(({ row, heading }) => `${row} ${heading}`));
  const found = stock.problems.filter(({ row, heading }) => !places.has(`${row} ${heading}`));
  return [...found, ...refused];
}
