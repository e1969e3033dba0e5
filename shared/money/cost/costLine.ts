import type { CurrencyCode } from '../../book/currencies.ts';
import { toMinor } from '../toMinor.ts';

export type CostKey =
  | 'material'
  | 'colorant'
  | 'supplies'
  | 'labor'
  | 'color match'
  | 'energy'
  | 'wear'
  | 'overhead';

/** One line of a cost: amount x rate, rounded once to the smallest unit of the currency. */
export interface CostLine {
  readonly key: CostKey;
  readonly label: string;
  /** How much, in `unit`; absent where it could not be worked out. */
  readonly amount?: number;
  readonly unit?: string;
  /** Currency for one unit of the amount, unrounded; absent where no price is known. */
  readonly rate?: number;
  /** Where a material's rate comes from. */
  readonly from?: 'stock' | 'list price';
  readonly minor: number;
}

/** What an order costs to make. `total` is the sum of its lines exactly; smallest units of the currency. */
export interface OrderCost {
  readonly currency: CurrencyCode;
  readonly lines: readonly CostLine[];
  readonly total: number;
  /** Total over the pieces ordered, unrounded. */
  readonly perGood: number;
  /** Of the total, what pieces that will not be good are expected to take: their share of plastisol, colorants and the work on them. */
  readonly scrap: { readonly pieces: number; readonly minor: number };
  /** What was taken to be so because the book does not say, in sentences. */
  readonly assumptions: readonly string[];
}

/** A line from its amount and rate; without one of them it costs nothing, and an assumption says so. */
export function costLine(line: Omit<CostLine, 'minor'>, currency: CurrencyCode): CostLine {
  const { amount = 0, rate = 0, label } = line;
  return { ...line, minor: toMinor(amount * rate, currency, label) };
}

export function sumOfLines(lines: readonly CostLine[]): number {
  return lines.reduce((sum, { minor }) => sum + minor, 0);
}
