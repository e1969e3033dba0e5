import { nameKey } from '../../book/bookIndex.ts';
import { yieldRate } from '../../quality/yieldRate.ts';
import { countText } from '../../words/quantityText.ts';
import type { LoggedRound } from './loggedRounds.ts';

/** Groups shown. */
const WORST = 3;
const CONFIDENCE = 0.95;

/** Pieces of one mold, pattern or layer count that come out worse than all others together. */
export interface WorstGroup {
  readonly kind: 'mold' | 'pattern' | 'layers';
  readonly name: string;
  readonly rounds: number;
  readonly poured: number;
  readonly good: number;
  /** Wilson interval of its yield. */
  readonly low: number;
  readonly high: number;
  /** Share of good pieces of everything else. */
  readonly others: number;
}

/**
 * The molds, patterns and layer counts that lose the most for sure: the upper end of a group's yield lies below the yield of
 * all others; the lowest upper end comes first, so that a few pieces do not make a group the worst.
 * @param layersOf - layers of a round's pattern, where known
 */
export function worstGroups(
  rounds: readonly LoggedRound[],
  layersOf: (round: LoggedRound) => number | undefined,
): readonly WorstGroup[] {
  const kinds = [
    groupsOf(rounds, 'mold', ({ mold }) => mold),
    groupsOf(rounds, 'pattern', ({ pattern }) => pattern),
    groupsOf(rounds, 'layers', (round) => {
      const layers = layersOf(round);
      return layers === undefined ? undefined : countText(layers, 'layer');
    }),
  ];
  return kinds
    .flat()
    .filter(({ high, others }) => high < others)
    .sort((one, other) => one.high - other.high)
    .slice(0, WORST);
}

interface Sums {
  readonly name: string;
  readonly rounds: number;
  readonly poured: number;
  readonly good: number;
}

function groupsOf(
  rounds: readonly LoggedRound[],
  kind: WorstGroup['kind'],
  nameOf: (round: LoggedRound) => string | undefined,
): readonly WorstGroup[] {
  const groups = new Map<string, Sums>();
  for (const round of rounds) {
    const name = nameOf(round);
    if (name === undefined) continue;
    const sums = groups.get(nameKey(name)) ?? { name, rounds: 0, poured: 0, good: 0 };
    groups.set(nameKey(name), {
      name: sums.name,
      rounds: sums.rounds + 1,
      poured: sums.poured + round.poured,
      good: sums.good + round.good,
    });
  }
  const all = [...groups.values()];
  const poured = all.reduce((sum, group) => sum + group.poured, 0);
  const good = all.reduce((sum, group) => sum + group.good, 0);
  return all.flatMap((group) => {
    const rest = poured - group.poured;
    if (rest === 0) return [];
    const { low, high } = yieldRate(group.good, group.poured, CONFIDENCE);
    return [{ kind, ...group, low, high, others: (good - group.good) / rest }];
  });
}
