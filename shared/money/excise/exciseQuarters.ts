import { InputError } from '../../errors/InputError.ts';
import type { ExciseLine } from './exciseLine.ts';

/** A sale as the books hold it, or the later correction of one, then with differences; amounts in smallest units. */
export interface ExciseEntry {
  /** Day of the sale or of the correction, `yyyy-mm-dd`. */
  readonly day: string;
  /** Day of the sale that this row corrects. */
  readonly corrects?: string;
  /** Price of the goods that the tax was worked out from. */
  readonly price: number;
  readonly excise: Pick<ExciseLine, 'base' | 'tax' | 'rate' | 'reason'>;
}

/** Sums of the tax over a time, as the preparer of a quarterly return asks for them. */
export interface ExciseSums {
  /** Number of sales, without corrections. */
  readonly sales: number;
  /** All sales, taxed or not: taxed + untaxed. */
  readonly gross: number;
  /** Price of the sales that are taxed, the tax still in it where it is inside. */
  readonly taxed: number;
  /** Price of the sales that are not, by reason. */
  readonly untaxed: Readonly<Record<Exclude<ExciseLine['reason'], 'taxable'>, number>>;
  /** Sum of what each sale is taxed on. */
  readonly base: number;
  /** Sum of the tax of each sale. */
  readonly tax: number;
  /** Corrections of sales in earlier quarters, entered in this one. */
  readonly adjustments: {
    readonly count: number;
    readonly price: number;
    readonly base: number;
    readonly tax: number;
  };
  /** Every rate that was used, ascending. */
  readonly rates: readonly number[];
}

/** One calendar quarter of the return. */
export interface ExciseQuarter extends ExciseSums {
  readonly year: number;
  /** 1 to 4. */
  readonly quarter: number;
  /** Last day for the return, `yyyy-mm-dd`; a weekend or holiday moves it to the next business day. */
  readonly due: string;
}

/**
 * The tax by calendar quarter, for every quarter that has an entry.
 *
 * A correction of a sale in the same quarter changes that quarter's sums; one of an earlier quarter stands apart.
 * @throws InputError `day of the sale must be a date such as 2026-03-31, got "soon"`
 * @source IRC4161, FORM720
 */
export function exciseQuarters(entries: readonly ExciseEntry[]): readonly ExciseQuarter[] {
  const byQuarter = new Map<number, ExciseEntry[]>();
  for (const entry of entries) {
    const quarter = quarterOf(entry.day);
    const found = byQuarter.get(quarter);
    if (found) found.push(entry);
    else byQuarter.set(quarter, [entry]);
  }
  return [...byQuarter]
    .sort(([one], [other]) => one - other)
    .map(([index, found]) => ({
      ...sums(found),
      year: Math.floor(index / 4),
      quarter: (index % 4) + 1,
      due: dueDay(index),
    }));
}

/** The quarters of each year added up. */
export function exciseYears(
  quarters: readonly ExciseQuarter[],
): readonly (ExciseSums & { readonly year: number })[] {
  const years = [...new Set(quarters.map(({ year }) => year))].sort((one, other) => one - other);
  return years.map((year) => ({
    ...quarters.filter((quarter) => quarter.year === year).reduce<ExciseSums>(plus, NOTHING),
    year,
  }));
}

const NOTHING: ExciseSums = {
  sales: 0,
  gross: 0,
  taxed: 0,
  untaxed: { off: 0, exempt: 0, export: 0, 'further manufacture': 0 },
  base: 0,
  tax: 0,
  adjustments: { count: 0, price: 0, base: 0, tax: 0 },
  rates: [],
};

function sums(entries: readonly ExciseEntry[]): ExciseSums {
  let all = NOTHING;
  for (const entry of entries) all = plus(all, sumsOf(entry));
  return all;
}

function sumsOf({ day, corrects, price, excise }: ExciseEntry): ExciseSums {
  const { base, tax, rate, reason } = excise;
  if (corrects !== undefined && quarterOf(corrects) !== quarterOf(day))
    return { ...NOTHING, adjustments: { count: 1, price, base, tax } };
  const sales = corrects === undefined ? 1 : 0;
  if (reason !== 'taxable')
    return { ...NOTHING, sales, gross: price, untaxed: { ...NOTHING.untaxed, [reason]: price } };
  return { ...NOTHING, sales, gross: price, taxed: price, base, tax, rates: [rate] };
}

function plus(one: ExciseSums, other: ExciseSums): ExciseSums {
  const [first, second] = [one.adjustments, other.adjustments];
  return {
    sales: one.sales + other.sales,
    gross: one.gross + other.gross,
    taxed: one.taxed + other.taxed,
    untaxed: {
      off: one.untaxed.off + other.untaxed.off,
      exempt: one.untaxed.exempt + other.untaxed.exempt,
      export: one.untaxed.export + other.untaxed.export,
      'further manufacture':
        one.untaxed['further manufacture'] + other.untaxed['further manufacture'],
    },
    base: one.base + other.base,
    tax: one.tax + other.tax,
    adjustments: {
      count: first.count + second.count,
      price: first.price + second.price,
      base: first.base + second.base,
      tax: first.tax + second.tax,
    },
    rates: [...new Set([...one.rates, ...other.rates])].sort((low, high) => low - high),
  };
}

/** Quarters since the year 0. */
function quarterOf(day: string): number {
  const match = /^(\d{4})-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.exec(day);
  if (match === null)
    throw new InputError({
      field: 'day of the sale',
      rule: { kind: 'form', wanted: 'a date such as 2026-03-31' },
      value: day,
    });
  return Number(match[1]) * 4 + Math.floor((Number(match[2]) - 1) / 3);
}

/** The last day of the month after the quarter. */
function dueDay(index: number): string {
  const year = Math.floor(index / 4) + (index % 4 === 3 ? 1 : 0);
  const end = ['04-30', '07-31', '10-31', '01-31'][index % 4] ?? '';
  return `${String(year).padStart(4, '0')}-${end}`;
}
