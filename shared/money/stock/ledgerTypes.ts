import type { Missing } from '../../book/missingCells.ts';
import type { Row } from '../../book/reading/readTable.ts';
import type { STOCK_MOVES } from '../../book/tables/stockMoves.ts';
import type { PackUnit } from '../packAmount.ts';

export type MoveRow = Row<typeof STOCK_MOVES>;
export type MoveReason = NonNullable<MoveRow['record']['reason']>;

/** What a move took from, or gave to, one lot. */
export interface LotPart {
  /** "" for stock that came in without a lot. */
  readonly lot: string;
  /** In the pack unit, > 0 */
  readonly amount: number;
}

/** One move as it was posted: amounts in the pack unit, money in the workbook's currency, unrounded. */
export interface PostedMove {
  /** On the sheet *Stock moves*. */
  readonly row: number;
  /** `yyyy-mm-dd`; "" where no row up to here has one. */
  readonly date: string;
  /** `nameKey` of the material. */
  readonly key: string;
  readonly reason: MoveReason;
  readonly order: string;
  readonly run: string;
  /** What it changed: in is positive, out negative; of a count the difference to what was expected. */
  readonly change: number;
  /** Paid, for a purchase; what came back, for a return. */
  readonly paid: number;
  /**
   * Value that left stock, at the weighted average; negative where it came back. Of a purchase: what stock used before it
   * was bought cost more than was reckoned then.
   */
  readonly cost: number;
  /** The same by first in, first out. */
  readonly fifoCost: number;
  readonly lots: readonly LotPart[];
  /** True when the row names its lot; otherwise the oldest was taken. */
  readonly isLotNamed: boolean;
}

/** One purchase's rest, oldest first. */
interface StockLot {
  readonly lot: string;
  readonly date: string;
  readonly row: number;
  readonly left: number;
  readonly value: number;
}

/** A count beside what the moves before it lead one to expect. */
export interface StockCount {
  readonly row: number;
  readonly date: string;
  readonly lot: string;
  readonly expected: number;
  readonly counted: number;
  /** Counted less expected; below 0 is lost. */
  readonly difference: number;
  /** Value found, or lost where negative. */
  readonly value: number;
}

export interface MaterialStock {
  readonly material: string;
  readonly key: string;
  /** Absent where Materials does not say, or does not list it. */
  readonly unit?: PackUnit;
  /** In the pack unit; below 0 is reported with its move. */
  readonly onHand: number;
  /** At the weighted average, unrounded; below 0 for what was used and never bought. */
  readonly value: number;
  /** Money for one pack unit; stays when nothing is left; absent while no price is known. */
  readonly average?: number;
  readonly lots: readonly StockLot[];
  readonly fifoValue: number;
  /** All purchases, less what went back. */
  readonly bought: { readonly amount: number; readonly money: number };
  readonly cost: number;
  readonly fifoCost: number;
  readonly counts: readonly StockCount[];
  /** Rows of *Stock moves* that were posted. */
  readonly moveCount: number;
  /** The move that took it below nothing, while it still is. */
  readonly negative?: { readonly row: number; readonly date: string; readonly onHand: number };
}

export interface Ledger {
  /** By `nameKey` of the material, in the order of Materials, then of the moves. */
  readonly stocks: ReadonlyMap<string, MaterialStock>;
  /** In the order they happened. */
  readonly moves: readonly PostedMove[];
  readonly problems: readonly Missing[];
}
