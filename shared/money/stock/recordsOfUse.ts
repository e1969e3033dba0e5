import { nameKey } from '../../book/bookIndex.ts';
import type { RecordOf } from '../../book/column.ts';
import { trimmed } from '../../book/layout/tableCells.ts';
import type { STOCK_MOVES } from '../../book/tables/stockMoves.ts';
import { describe } from '../../errors/describe.ts';
import { InputError } from '../../errors/InputError.ts';
import type { RunUse, UseLine, UseReason } from './runUse.ts';
import { typedAmount } from './typedAmount.ts';

type MoveRecord = RecordOf<typeof STOCK_MOVES>;

/** Amounts as typed, by `nameKey` of the material; one that is not there is as planned, or nothing for scrap. */
export interface TypedAmounts {
  readonly used: Readonly<Record<string, string>>;
  readonly scrapped: Readonly<Record<string, string>>;
}

interface FieldProblem {
  readonly field: string;
  readonly text: string;
}

export type RecordsOfUse =
  | { readonly kind: 'records'; readonly records: readonly MoveRecord[] }
  | { readonly kind: 'refused'; readonly problems: readonly FieldProblem[] };

/**
 * Rows of *Stock moves* for a run: what it used and what was scrapped, less what stands there already. Posting again
 * gives no rows; a correction is a row of its own, typed by hand.
 * @param date `yyyy-mm-dd`
 */
export function recordsOfUse(use: RunUse, typed: TypedAmounts, date: string): RecordsOfUse {
  const problems: FieldProblem[] = strays(use, typed);
  const records: MoveRecord[] = [];
  for (const line of use.lines) {
    for (const reason of ['used', 'scrapped'] as const) {
      if (line[reason]) continue;
      const amount = amountOf(line, reason, typed, problems);
      if (amount > 0) records.push(recordOf(use, line, { reason, amount, date }));
    }
  }
  return problems.length > 0 ? { kind: 'refused', problems } : { kind: 'records', records };
}

/** The token that makes a row of a run one of a kind. */
function entryOf(run: string, { key, lot }: UseLine, reason: UseReason): string {
  return [reason, nameKey(run), key, nameKey(lot)].join(' | ');
}

/** The field of an amount in a form. */
export function amountField(reason: UseReason, key: string): string {
  return `${reason} ${key}`;
}

/** Every amount of a run's form. */
export function fieldsOfUse({ lines }: Pick<RunUse, 'lines'>): readonly string[] {
  return lines.flatMap(({ key }) => [amountField('used', key), amountField('scrapped', key)]);
}

function amountOf(
  line: UseLine,
  reason: UseReason,
  typed: TypedAmounts,
  problems: FieldProblem[],
): number {
  const text = own(typed[reason], line.key);
  if (text === undefined || text.trim() === '')
    return reason === 'used' && text === undefined ? line.planned : 0;
  const field = `${line.material} ${reason}`;
  try {
    const { material, unit, facts } = line;
    return typedAmount(text, field, { ...facts, material, packUnit: unit });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    problems.push({ field: amountField(reason, line.key), text: describe(error) });
    return 0;
  }
}

/** Amounts for something that the run does not take: the page is old, or the material was renamed meanwhile. */
function strays(use: RunUse, typed: TypedAmounts): FieldProblem[] {
  const keys = use.lines.map(({ key }) => key);
  const sent = [...new Set([...Object.keys(typed.used), ...Object.keys(typed.scrapped)])];
  return sent
    .filter((key) => !keys.includes(key))
    .map((key) => {
      const rule = { kind: 'form', wanted: `a material that run ${use.run} takes` } as const;
      return { field: '', text: describe({ field: 'material', rule, value: key }) };
    });
}

function own(texts: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.keys(texts).includes(key) ? texts[key] : undefined;
}

function recordOf(
  { order, run }: RunUse,
  line: UseLine,
  { reason, amount, date }: { reason: UseReason; amount: number; date: string },
): MoveRecord {
  return {
    date,
    material: line.material,
    ...(line.lot === '' ? {} : { lot: line.lot }),
    amount: -trimmed(amount),
    reason,
    order,
    run,
    entry: entryOf(run, line, reason),
  };
}
