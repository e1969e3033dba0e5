import { type PiecesToPour, piecesToPour } from '../../batch/piecesToPour.ts';
import { meanYield, yieldBelief } from '../../batch/yieldBelief.ts';
import { type BookIndex, type Evidence, nameKey, remember } from '../../book/bookIndex.ts';
import { type YieldPrior, yieldPrior } from '../../quality/yields/yieldPrior.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import type { PiecesPlan } from '../planTypes.ts';

export type PlannedPieces =
  | { readonly kind: 'pieces'; readonly pieces: PiecesPlan; readonly evidence: Evidence }
  | Extract<PiecesToPour, { readonly kind: 'unreachable' }>;

const NO_EVIDENCE: Evidence = { good: 0, poured: 0, uncounted: [] };

/**
 * What the shop expects of a mold and pattern before their own rounds are looked at: learned from all its molds and patterns
 * once the log holds enough of them, else its setting.
 */
function shopPrior(index: BookIndex): YieldPrior {
  const { expectedYield, yieldWeight } = index.book.shop;
  return remember(index, 'yield prior', () =>
    yieldPrior(
      [...index.evidence.values()].filter(({ poured }) => poured > 0),
      { mean: expectedYield, weight: yieldWeight },
    ),
  );
}

/** Pieces to pour for an order from the record of its mold and pattern, all versions together, and the shop's prior. */
export function planPieces(index: BookIndex, facts: OrderFacts): PlannedPieces {
  const { shop } = index.book;
  const pair = nameKey(facts.mold.name, facts.pattern.name);
  const evidence = index.evidence.get(pair) ?? NO_EVIDENCE;
  const { good, poured } = evidence;
  const prior = shopPrior(index);
  const belief = yieldBelief({ mean: prior.mean, weight: prior.weight, good, poured });
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
      prior,
      expectedYield: meanYield(belief),
    },
  };
}
