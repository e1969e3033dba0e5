import type { Evidence } from '../bookIndex.ts';
import type { OrderFacts } from '../findOrder.ts';
import type { PiecesPlan, Warning } from '../plan.ts';
import { sayShare } from '../say.ts';

/** How much the number of pieces can be relied on. */
export function pieceWarnings(
  facts: OrderFacts,
  pieces: PiecesPlan,
  evidence: Evidence,
): readonly Warning[] {
  const what = `${facts.pattern.name} in ${facts.mold.name}`;
  const texts = [
    ...(evidence.poured === 0
      ? [
          `Nothing is logged yet for ${what}, so a yield of ${sayShare(pieces.expectedYield)} is assumed.`,
        ]
      : []),
    ...evidence.uncounted.map(
      (row) =>
        `Pour log row ${row} is not counted for ${what}: poured and good must both be given, good no more than poured.`,
    ),
  ];
  return texts.map((text) => ({ about: 'pieces', text }));
}

/** Dates that do not go together. */
export function timeWarnings({ row }: OrderFacts): readonly Warning[] {
  const { due, pourOn } = row.record;
  if (due === undefined || pourOn === undefined || pourOn <= due) return [];
  return [
    {
      about: 'time',
      text: `The run is set for ${pourOn}, after the due date ${due}: pour earlier, or agree a new date.`,
    },
  ];
}
