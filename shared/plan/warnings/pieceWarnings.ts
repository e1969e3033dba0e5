import type { Evidence } from '../../book/bookIndex.ts';
import { countText, shareText } from '../../words/quantityText.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import { priorText } from '../piecesEvidenceText.ts';
import type { PiecesPlan, Warning } from '../planTypes.ts';

/** How much the number of pieces can be relied on. */
export function pieceWarnings(
  facts: OrderFacts,
  pieces: PiecesPlan,
  evidence: Evidence,
): readonly Warning[] {
  const what = `${facts.pattern.name} in ${facts.mold.name}`;
  const texts = [
    ...scantyRecord(what, pieces),
    ...evidence.uncounted.map(
      (row) =>
        `Pour log row ${row} is not counted for ${what}: poured and good must both be given, good no more than poured.`,
    ),
  ];
  return texts.map((text) => ({ about: 'pieces', text }));
}

/** A yield that rests more on what the shop expects than on rounds of this mold and pattern. */
function scantyRecord(
  what: string,
  { evidence, prior, expectedYield }: PiecesPlan,
): readonly string[] {
  const share = shareText(expectedYield);
  if (evidence.poured === 0)
    return [
      prior.from === 'record'
        ? `Nothing is logged yet for ${what}, so a yield of ${share} is taken ${priorText(prior)}.`
        : `Nothing is logged yet for ${what}, so a yield of ${share} is assumed.`,
    ];
  if (evidence.poured >= prior.weight) return [];
  return [
    `Only ${countText(evidence.poured, 'piece')} of ${what} ${evidence.poured === 1 ? 'is' : 'are'} logged, so the yield of ${share} comes mostly ${priorText(prior)}.`,
  ];
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
