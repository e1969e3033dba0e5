import type { BooksBook } from '../../book/book.ts';
import { indexBook } from '../../book/bookIndex.ts';
import type { Missing } from '../../book/missingCells.ts';
import type { CostIndex } from '../cost/costIndex.ts';
import { exciseQuarters, exciseYears } from '../excise/exciseQuarters.ts';
import { moneyAssumptions } from '../moneyAssumptions.ts';
import { ledger } from '../stock/ledger.ts';
import { stockProblems } from '../stock/stockProblems.ts';
import { stockValues } from '../stock/stockValues.ts';
import { unitCosts } from '../stock/unitCosts.ts';
import { toMinor } from '../toMinor.ts';
import type { Books, Sale } from './booksTypes.ts';
import { closedMonths } from './closedMonths.ts';
import { exciseEntries } from './exciseEntries.ts';
import { monthFigures, otherStockCosts, yearFigures } from './monthFigures.ts';
import { paymentProblems, receivable } from './receivable.ts';
import { salesOf } from './salesOf.ts';

/**
 * The books of a shop: sales with their cost and margin by order, month and year, the excise by quarter, and what
 * customers owe.
 *
 * Orders add up to their month, months to their year and quarters to theirs, exactly. A closed month keeps its frozen
 * figures; its later corrections stand beside them.
 * @param day `yyyy-mm-dd`, the day that ages are counted to and corrections are entered on
 */
export function books(book: BooksBook, day: string): Books {
  const { shop, supplies, stockMoves, materials } = book;
  const { currency } = shop;
  const stock = ledger(stockMoves, materials);
  const index = indexBook(book);
  const costs: CostIndex = { index, supplies, prices: unitCosts(stock, materials) };
  const { sales, problems, assumptions } = salesOf(book, costs, stock);
  const { closed, problems: closedProblems } = closedMonths(book);
  const other = new Map<string, number>();
  for (const [month, cost] of otherStockCosts(stock.moves))
    other.set(month, toMinor(cost, currency, 'stock lost'));
  const months = monthFigures(sales, closed, other);
  const quarters = exciseQuarters(exciseEntries(sales, closed, day));
  return {
    currency,
    day,
    sales,
    months,
    years: yearFigures(months),
    quarters,
    exciseYears: exciseYears(quarters),
    receivable: receivable(book, sales, day),
    stockValue: stockValues(stock, currency).total,
    problems: [
      ...problems,
      ...paymentProblems(book, index.orders),
      ...closedProblems,
      ...sales.filter((sale) => sale.day > day).map(inFuture),
      ...stockProblems(stock, book),
    ],
    assumptions: [...moneyAssumptions(index), ...assumptions],
  };
}

function inFuture({ row, order, day }: Sale): Missing {
  const text = `order ${order} is shipped on ${day}, which is still to come`;
  return { sheet: 'Orders', row, heading: 'Shipped on', text };
}
