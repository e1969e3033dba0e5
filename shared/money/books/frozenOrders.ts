import { EXCISE_STATUSES } from '../../book/settings/exciseChoices.ts';
import type { ExciseLine } from '../excise/exciseLine.ts';
import type { Sale } from './booksTypes.ts';

/** One order of a closed month as its row keeps it, in smallest units. */
export interface FrozenOrder {
  readonly order: string;
  readonly day: string;
  readonly goods: number;
  readonly sales: number;
  readonly cost: number;
  readonly excise: Pick<ExciseLine, 'base' | 'tax' | 'rate' | 'reason'>;
}

/** Most characters that a cell takes with room to spare; the platform's own limit is 50,000. */
const LONGEST_CELL = 45_000;

/** Orders of a month as text for one cell; "" where they are too many for it. */
export function frozenText(sales: readonly Sale[]): string {
  const text = JSON.stringify(
    sales.map(({ order, day, goods, sales: net, cost, excise }) => [
      ...[order, day, goods, net, cost.total],
      ...[excise.base, excise.tax, excise.rate, excise.reason],
    ]),
  );
  return text.length > LONGEST_CELL ? '' : text;
}

/** The orders of {@link frozenText}; undefined for a text that is not one, as after an edit by hand. */
export function frozenOrders(text: string | undefined): readonly FrozenOrder[] | undefined {
  if (text === undefined || text === '') return undefined;
  const lines = parsed(text);
  if (!Array.isArray(lines)) return undefined;
  const orders = lines.map(orderOf);
  return orders.every((order) => order !== undefined) ? orders : undefined;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function orderOf(line: unknown): FrozenOrder | undefined {
  if (!Array.isArray(line) || line.length !== 9) return undefined;
  const [order, day, goods, sales, cost, base, tax, rate, reason]: readonly unknown[] = line;
  if (typeof order !== 'string' || typeof day !== 'string') return undefined;
  if (!/^\d{4}-\d\d-\d\d$/.test(day)) return undefined;
  if (!isWhole(goods) || !isWhole(sales) || !isWhole(cost)) return undefined;
  if (!isWhole(base) || !isWhole(tax) || typeof rate !== 'number') return undefined;
  const known = ([...EXCISE_STATUSES, 'off'] as const).find((one) => one === reason);
  if (known === undefined) return undefined;
  return { order, day, goods, sales, cost, excise: { base, tax, rate, reason: known } };
}

function isWhole(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value);
}
