import { nameKey } from '../../book/bookIndex.ts';
import type { PackUnit } from '../packAmount.ts';
import type { Ledger, MoveReason, PostedMove } from './ledgerTypes.ts';

/** One lot's part of one move. */
export interface TraceLine {
  readonly row: number;
  readonly date: string;
  readonly material: string;
  /** "" for stock that came in without a lot. */
  readonly lot: string;
  /** In the pack unit: in is positive, out negative. */
  readonly amount: number;
  readonly unit?: PackUnit;
  readonly reason: MoveReason;
  readonly order: string;
  readonly run: string;
  /** False where the row names no lot and the oldest is reckoned with. */
  readonly isLotNamed: boolean;
}

export interface LotTrace {
  /** Moves of the lot of this name: where it came from, and which orders and runs contain it. */
  readonly ofLot: readonly TraceLine[];
  /** Moves for the order or run of this number: which lots are in it. */
  readonly ofOrder: readonly TraceLine[];
}

/**
 * Both ways from one text: where the lot of that name went, and which lots are in the order or run of that number.
 * @param name a lot, an order or a run, in any writing
 */
export function lotTrace({ moves, stocks }: Ledger, name: string): LotTrace {
  const key = nameKey(name);
  if (key === '') return { ofLot: [], ofOrder: [] };
  const lines = (of: (move: PostedMove, lot: string) => boolean): readonly TraceLine[] =>
    moves.flatMap((move) =>
      move.lots
        .filter(({ lot }) => of(move, lot))
        .map(({ lot, amount }) => {
          const { row, date, reason, order, run, isLotNamed } = move;
          const { material = '', unit } = stocks.get(move.key) ?? {};
          const part = Math.sign(move.change) * amount;
          const named = { row, date, material, lot, amount: part, reason, order, run, isLotNamed };
          return unit === undefined ? named : { ...named, unit };
        }),
    );
  return {
    ofLot: lines((_move, lot) => nameKey(lot) === key),
    ofOrder: lines(({ order, run }) => nameKey(order) === key || nameKey(run) === key),
  };
}
