import { requireNumber } from '../../errors/requireNumber.ts';

/** What came out at one figure; counts may be parts, where an outcome is half a pass. */
export interface LogisticPoint {
  /** The figure: a temperature, a time */
  readonly at: number;
  /** 0 to `of` */
  readonly passed: number;
  /** > 0 */
  readonly of: number;
}

/** @throws InputError on a point that cannot be */
export function requirePoints(points: readonly LogisticPoint[]): void {
  for (const { at, passed, of } of points) {
    requireNumber(at, 'figure');
    requireNumber(of, 'count', { greaterThan: 0 });
    requireNumber(passed, 'passed', { atLeast: 0, atMost: of });
  }
}

/** How far the figures tell pass from fail, before anything is fitted. */
export type Telling = 'nothing' | 'one figure' | 'all passed' | 'all failed' | 'apart' | 'mixed';

/**
 * Whether a finite curve of greatest likelihood exists: only where passes and fails overlap (`mixed`). `apart` when one
 * figure parts them, ties at that figure included.
 * @source ALBERTANDERSON, complete and quasi-complete separation
 */
export function tellingOf(points: readonly LogisticPoint[]): Telling {
  if (points.length === 0) return 'nothing';
  const passes = points.filter(({ passed }) => passed > 0).map(({ at }) => at);
  const fails = points.filter(({ passed, of }) => passed < of).map(({ at }) => at);
  if (fails.length === 0) return 'all passed';
  if (passes.length === 0) return 'all failed';
  const all = points.map(({ at }) => at);
  if (Math.min(...all) === Math.max(...all)) return 'one figure';
  const risesApart = Math.max(...fails) <= Math.min(...passes);
  const fallsApart = Math.max(...passes) <= Math.min(...fails);
  return risesApart || fallsApart ? 'apart' : 'mixed';
}
