import { createContext, runInContext } from 'node:vm';
import type { TableKey } from '../../shared/book/tables.ts';
import { demoRows } from '../../templates/demoShop/demoShop.ts';
import { type Cells, demoCells, platformOf, type Values } from './demoCells.ts';

export interface BooksTime {
  readonly orders: number;
  readonly moves: number;
  readonly milliseconds: number;
}

/** Quantities that customers order, and how long a shop has done so. */
const QUANTITIES = [25, 40, 50, 60, 75, 100, 120, 150, 200, 250];
const YEARS = 5;
const MOVES = 10;
const RUNS = 3;

/**
 * Time of the page call `readBooks` of the built script over growing books: shipped orders of the demo shop's molds and
 * patterns in ten quantities, ten stock moves and one payment each. The platform's reads are arrays in memory, so this is
 * the script's own work; the quickest of a few runs.
 */
export function booksTimes(code: string, counts: readonly number[]): readonly BooksTime[] {
  return counts.map((orders) => {
    const cells = bookCells(orders);
    const context = createContext(platformOf(cells));
    runInContext(code, context);
    const times = Array.from({ length: RUNS }, () => {
      const start = performance.now();
      const count: unknown = runInContext(
        'readBooks().months.reduce((sum, month) => sum + month.orders, 0)',
        context,
      );
      if (count !== orders) throw new Error(`the books hold ${String(count)} of ${orders} orders`);
      return performance.now() - start;
    });
    return { orders, moves: orders * MOVES, milliseconds: Math.min(...times) };
  });
}

function bookCells(orders: number): ReadonlyMap<string, Cells> {
  const rows = demoRows();
  const base = rows.orders.filter(({ status }) => status !== 'canceled');
  const many = Array.from({ length: orders }, (_, index): Values => {
    const day = dayOf(index / orders);
    return {
      ...(base[index % base.length] as Values), // an order row is texts and numbers
      order: `N${index}`,
      quantity: QUANTITIES[index % QUANTITIES.length],
      date: day,
      shippedOn: day,
      priceAgreed: 180 + (index % 90),
      status: 'shipped',
    };
  });
  const own: Partial<Record<TableKey, readonly Values[]>> = {
    orders: many,
    stockMoves: movesOf(
      orders,
      rows.materials.map(({ material }) => String(material)),
    ),
    payments: many.map(({ order, shippedOn }) => ({
      ...{ date: shippedOn, order, kind: 'payment', money: 150 },
    })),
    closedMonths: [],
  };
  return demoCells(own);
}

/** Nine uses for each order, and a purchase that makes up for them. */
function movesOf(orders: number, materials: readonly string[]): readonly Values[] {
  return Array.from({ length: orders * MOVES }, (_, index) => {
    const order = Math.floor(index / MOVES);
    const isIn = index % MOVES === 0;
    const material = materials[(index + order) % materials.length];
    const move = isIn
      ? { amount: 2, reason: 'purchase', money: 60, lot: `L-${index}` }
      : { amount: -0.2, reason: 'used', order: `N${order}` };
    return { date: dayOf(order / orders), material, ...move };
  });
}

/** A day so far into the years before the demo shop's last. */
function dayOf(part: number): string {
  return new Date(Date.UTC(2021, 11, 1) + part * YEARS * 365 * 86_400_000)
    .toISOString()
    .slice(0, 10);
}
