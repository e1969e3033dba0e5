import { DEFECT_KEYS, POUR_LOG } from '../../book/tables/pourLog.ts';
import { type CountedKind, pareto } from '../../quality/charts/pareto.ts';
import type { LoggedRound } from './loggedRounds.ts';

const NOT_NAMED = 'Not named';

/** Bad pieces by what was wrong; those with nothing named have a bar of their own, last beside *Other*. */
export function defectPareto(
  rounds: readonly LoggedRound[],
  title: string,
): DefectPareto | undefined {
  const bars = pareto(countedDefects(rounds));
  return bars.length === 0 ? undefined : { kind: 'defect-pareto', title, bars };
}

/** Pieces by defect, in the order of the log's columns. */
function countedDefects(rounds: readonly LoggedRound[]): readonly CountedKind[] {
  const kinds = DEFECT_KEYS.map((key) => ({
    name: POUR_LOG.columns[key].heading,
    count: rounds.reduce((sum, { defects }) => sum + (defects[key] ?? 0), 0),
    isRest: key === 'other',
  }));
  return [...kinds, { name: NOT_NAMED, count: notNamed(rounds), isRest: true }];
}

/** A piece with two defects may be named twice: a round never has fewer than none left. */
function notNamed(rounds: readonly LoggedRound[]): number {
  return rounds.reduce((sum, { poured, good, defects }) => {
    const named = Object.values(defects).reduce((total, count) => total + count, 0);
    return sum + Math.max(0, poured - good - named);
  }, 0);
}

/** What the Pareto picture shows: bad pieces by what was wrong, the most first. */
export interface DefectPareto {
  readonly kind: 'defect-pareto';
  readonly title: string;
  readonly bars: readonly {
    readonly name: string;
    readonly count: number;
    readonly share: number;
    readonly cumulated: number;
  }[];
}
