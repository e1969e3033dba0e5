import { type PiecesToPour, piecesToPour } from '../batch/piecesToPour.ts';
import { meanYield, yieldBelief } from '../batch/yieldBelief.ts';
import { type BookIndex, type Evidence, nameKey, remember } from './bookIndex.ts';
import type { OrderFacts } from './findOrder.ts';
import type { PiecesPlan } from './plan.ts';

export type PlannedPieces =
  | { readonly kind: 'pieces'; readonly pieces: PiecesPlan; readonly evidence: Evidence }
  | Extract<PiecesToPour, { readonly kind: 'unreachable' }>;

const NO_EVIDENCE: Evidence = { good: 0, poured: 0, uncounted: [] };

/** Pieces to pour for an order from the record of its mold and pattern, all versions together, and the shop's assumption. */
export function planPieces(index: BookIndex, facts: OrderFacts): PlannedPieces {
  const { shop } = index.book;
  const pair = nameKey(facts.mold.name, facts.pattern.name);
  const evidence = index.evidence.get(pair) ?? NO_EVIDENCE;
  const { good, poured } = evidence;
  const belief = yieldBelief({ mean: shop.expectedYield, weight: shop.yieldWeight, good, poured });
  const answer = remember(index, nameKey('pieces', facts.quantity, pair), () =>
    piecesToPour(facts.quantity, belief, shop.confidence),
  );
  if (answer.kind === 'unreachable') return answer;
  const perRound = facts.mold.cavities * facts.moldsInUse;
  return {
    kind: 'pieces',
    evidence,
    pieces: {
      toPour: answer.pieces,
      rounds: Math.ceil(answer.pieces / perRound),
      perRound,
      expectedGood: answer.expectedGood,
      attained: answer.attained,
      confidence: shop.confidence,
      evidence: { good, poured },
      expectedYield: meanYield(belief),
    },
  };
}
