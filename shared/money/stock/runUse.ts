import type { MoneyBook } from '../../book/book.ts';
import { indexBook, nameKey, type OrderRow } from '../../book/bookIndex.ts';
import { currentLogRows } from '../../book/currentLogRows.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import type { PackFacts, PackUnit } from '../packAmount.ts';
import type { Ledger, LotPart, MaterialStock, PostedMove } from './ledgerTypes.ts';
import { orderUses } from './orderUses.ts';

export type UseReason = 'used' | 'scrapped';

/** What rows of *Stock moves* took out already. */
interface Posted {
  readonly amount: number;
  readonly lots: readonly LotPart[];
  readonly rows: readonly number[];
}

/** One material of a run: what it takes by plan, and what was taken out of stock for it already. */
export interface UseLine {
  readonly material: string;
  readonly key: string;
  readonly lot: string;
  readonly unit: PackUnit;
  /** For the pieces that the run poured. */
  readonly planned: number;
  readonly onHand: number;
  /** What turns a weighed amount into the pack unit. */
  readonly facts: Pick<PackFacts, 'density' | 'dropVolume'>;
  /** Taken out for this run before; absent while nothing was. */
  readonly used?: Posted;
  readonly scrapped?: Posted;
  /** What to know about its lot. */
  readonly note?: string;
}

export interface RunUse {
  readonly kind: 'use';
  readonly order: string;
  readonly run: string;
  readonly poured: number;
  readonly good: number;
  readonly lines: readonly UseLine[];
  readonly assumptions: readonly string[];
  readonly gaps: readonly string[];
}

export type RunUseResult = RunUse | { readonly kind: 'none'; readonly because: readonly string[] };

/**
 * What a logged run takes out of stock, by the plan of its order for the pieces that it poured, beside what was taken out
 * for it already.
 */
export function runUse(book: MoneyBook, stock: Ledger, row: OrderRow, run: string): RunUseResult {
  const order = row.record.order ?? '';
  const rounds = currentLogRows(book.pourLog).filter(
    ({ record }) =>
      nameKey(record.run) === nameKey(run) && nameKey(record.order) === nameKey(order),
  );
  const sum = (of: 'poured' | 'good') =>
    rounds.reduce((all, { record }) => all + (record[of] ?? 0), 0);
  const [poured, good] = [sum('poured'), sum('good')];
  if (poured === 0)
    return { kind: 'none', because: [`no pieces of run ${run} are in Pour log: log them first`] };
  const isOrderSupplied = stock.moves.some(
    (move) =>
      move.reason === 'used' &&
      nameKey(move.order) === nameKey(order) &&
      move.run !== '' &&
      nameKey(move.run) !== nameKey(run),
  );
  const index = indexBook(book);
  const found = orderUses(index, row, book.supplies, { poured, good, isOrderSupplied });
  if (found.kind === 'missing') return { kind: 'none', because: found.missing.map(missingWords) };
  const { uses, assumptions, gaps } = found;
  const own = stock.moves.filter((move) => nameKey(move.run) === nameKey(run));
  const lines = uses.map(({ amount, ...use }): UseLine => {
    const held = stock.stocks.get(use.key);
    const { density, dropVolume } = index.materials.get(use.key)?.record ?? {};
    const moves = own.filter(({ key }) => key === use.key);
    const used = postedOf(moves, 'used');
    const scrapped = postedOf(moves, 'scrapped');
    const note = used ? undefined : lotNote(use.lot, amount, held);
    return {
      ...use,
      planned: amount,
      onHand: held?.onHand ?? 0,
      facts: {
        ...(density === undefined ? {} : { density }),
        ...(dropVolume === undefined ? {} : { dropVolume }),
      },
      ...(used ? { used } : {}),
      ...(scrapped ? { scrapped } : {}),
      ...(note === undefined ? {} : { note }),
    };
  });
  return { kind: 'use', order, run, poured, good, lines, assumptions, gaps };
}

function missingWords({ sheet, row, text }: { sheet: string; row?: number; text: string }): string {
  return `in ${sheet}${row === undefined ? '' : `, row ${row}`}: ${text}`;
}

/** Rows typed by hand count as well: what was taken out once is not taken out again. */
function postedOf(moves: readonly PostedMove[], wanted: UseReason): Posted | undefined {
  const own = moves.filter(({ reason }) => reason === wanted);
  if (own.length === 0) return undefined;
  return {
    amount: own.reduce((sum, { change }) => sum - change, 0),
    lots: own.flatMap(({ lots }) => lots),
    rows: own.map(({ row }) => row),
  };
}

/** A lot that Materials names as in use and that stock does not have enough of. */
function lotNote(lot: string, wanted: number, held: MaterialStock | undefined): string | undefined {
  if (lot === '' || held === undefined) return undefined;
  const own = held.lots.filter((one) => nameKey(one.lot) === nameKey(lot));
  const left = own.reduce((sum, one) => sum + one.left, 0);
  if (left >= wanted) return undefined;
  const unit = held.unit === undefined ? '' : ` ${held.unit}`;
  return left === 0
    ? `nothing of lot ${lot} is in stock: the oldest lot is reckoned with; set the lot in use in Materials`
    : `lot ${lot} holds ${formatPlain(left)}${unit}: what it lacks is reckoned from the oldest lot`;
}
