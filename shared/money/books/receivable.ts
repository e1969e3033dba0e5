import type { BooksBook } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import type { Missing } from '../../book/missingCells.ts';
import { daysBetween } from '../../book/reading/daysBetween.ts';
import { type PaymentRecord, TABLES } from '../../book/tables.ts';
import { describe } from '../../errors/describe.ts';
import { toMinor } from '../toMinor.ts';
import type { Age, OpenAmount, Receivable, Sale } from './booksTypes.ts';
import { compareText } from './salesOf.ts';

/** Ages in days since the sale, the last day that belongs to each. */
const AGE_ENDS: readonly (readonly [number, Age])[] = [
  [30, '0-30'],
  [60, '31-60'],
  [90, '61-90'],
];

/**
 * What customers owe on a day, by how long ago the sale was.
 *
 * open = total of the order less deposits and payments, plus refunds; sales and payments after the day do not count.
 * Payments without a day count always. What is paid on an order not shipped by then is held for it.
 * @param day `yyyy-mm-dd`
 */
export function receivable(
  { payments, shop }: Pick<BooksBook, 'payments' | 'shop'>,
  sales: readonly Sale[],
  day: string,
): Receivable {
  const paid = new Map<string, { order: string; money: number }>();
  for (const { record } of payments) {
    const { order, kind, money, date } = record;
    if (order === undefined || kind === undefined || money === undefined) continue;
    if (date !== undefined && date > day) continue;
    const minor = toMinor(money, shop.currency, 'money');
    const own = paid.get(nameKey(order)) ?? { order, money: 0 };
    own.money += kind === 'refund' ? -minor : minor;
    paid.set(nameKey(order), own);
  }
  const sold = sales
    .filter((sale) => sale.day <= day)
    .map((sale) => openAmount(sale, paid.get(nameKey(sale.order))?.money ?? 0, day));
  const keys = new Set(sold.map(({ order }) => nameKey(order)));
  const held = [...paid]
    .filter(([key, { money }]) => !keys.has(key) && money !== 0)
    .map(([, { order, money }]) => ({ order, paid: money }))
    .sort((one, other) => compareText(one.order, other.order));
  const open = sold.filter((one) => one.open > 0);
  return {
    day,
    open,
    byAge: byAge(open),
    total: sum(open.map((one) => one.open)),
    overpaid: sold.filter((one) => one.open < 0),
    held,
    heldTotal: sum(held.map((one) => one.paid)),
  };
}

/** Payments that cannot be counted, or name an order that is not there. */
export function paymentProblems(
  { payments, problems }: Pick<BooksBook, 'payments' | 'problems'>,
  orders: ReadonlyMap<string, unknown>,
): readonly Missing[] {
  const { sheet, columns } = TABLES.payments;
  const refused = problems.filter((problem) => problem.sheet === sheet);
  const lacking = payments.flatMap(({ row, record }) =>
    NEEDED.filter(
      (key) =>
        record[key] === undefined &&
        !refused.some((one) => one.row === row && one.heading === columns[key].heading),
    ).map((key) => ({ sheet, row, heading: columns[key].heading, text: `${key} must be given` })),
  );
  const unknown = payments.flatMap(({ row, record: { order } }) => {
    if (order === undefined || orders.has(nameKey(order))) return [];
    const facts = {
      field: 'order',
      rule: { kind: 'known', where: 'Orders' },
      value: order,
    } as const;
    return [{ sheet, row, heading: columns.order.heading, text: describe(facts) }];
  });
  const told = refused.map(({ row, heading, error }) => ({
    sheet,
    ...(row === undefined ? {} : { row }),
    heading,
    text: describe(error),
  }));
  return [...told, ...lacking, ...unknown];
}

const NEEDED = [
  'date',
  'order',
  'kind',
  'money',
] as const satisfies readonly (keyof PaymentRecord)[];

function openAmount(
  { order, customer, total, day: sold }: Sale,
  paid: number,
  day: string,
): OpenAmount {
  return { order, customer, total, paid, open: total - paid, days: daysBetween(sold, day) };
}

function byAge(open: readonly OpenAmount[]): Receivable['byAge'] {
  const ages: Record<Age, number> = { '0-30': 0, '31-60': 0, '61-90': 0, 'over 90': 0 };
  for (const { days, open: money } of open) ages[ageOf(days)] += money;
  return ages;
}

/** @param days since the sale, >= 0 */
export function ageOf(days: number): Age {
  return AGE_ENDS.find(([end]) => days <= end)?.[1] ?? 'over 90';
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((all, one) => all + one, 0);
}
