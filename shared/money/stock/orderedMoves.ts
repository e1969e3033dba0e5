import type { MoveRow } from './ledgerTypes.ts';

export interface DatedMove {
  readonly move: MoveRow;
  readonly date: string;
}

/** Moves in date order, then in the order of the sheet; a row without a date stands with the row above it. */
export function orderedMoves(moves: readonly MoveRow[]): readonly DatedMove[] {
  let above = '';
  const dated = moves.map((move) => {
    const date = move.record.date ?? above;
    above = date;
    return { move, date };
  });
  // The sort is stable, and next to free where rows were added day by day.
  return dated.sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
}
