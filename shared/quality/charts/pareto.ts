import { requireNumber } from '../../errors/requireNumber.ts';

/** A kind of defect and how many pieces had it. */
export interface CountedKind {
  readonly name: string;
  readonly count: number;
  /** Gathers what is not told apart: stands last, however large. */
  readonly isRest?: boolean;
}

export interface ParetoBar {
  readonly name: string;
  readonly count: number;
  /** Of all counted, 0 to 1. */
  readonly share: number;
  /** This and all before it, 0 to 1. */
  readonly cumulated: number;
}

/**
 * Kinds by count, the largest first; equal ones stay in the order given; kinds that never came are left out.
 * @param kinds - counts whole, >= 0
 * @returns empty when nothing was counted
 * @throws InputError on a figure out of range
 */
export function pareto(kinds: readonly CountedKind[]): readonly ParetoBar[] {
  for (const { count } of kinds) requireNumber(count, 'count', { atLeast: 0, whole: true });
  const all = kinds.reduce((sum, { count }) => sum + count, 0);
  const sorted = kinds
    .filter(({ count }) => count > 0)
    .sort(
      (one, other) =>
        Number(one.isRest ?? false) - Number(other.isRest ?? false) || other.count - one.count,
    );
  let sum = 0;
  return sorted.map(({ name, count }) => {
    sum += count;
    return { name, count, share: count / all, cumulated: sum / all };
  });
}
