import type { Defect, RunFigures } from './runFigures.ts';

/** What in a run speaks for a cause, with its figures in the shop's units. */
interface Evidence {
  /** How far the figure is beyond its limit, in spans of its own doubt; > 0 */
  readonly excess: number;
  /** A sentence without full stop */
  readonly because: string;
  /** A sentence without full stop: what to do next time */
  readonly cure: string;
}

/** A cause that the heat record can show. */
export interface CauseRule {
  /** Without capital and full stop */
  readonly cause: string;
  /** How strongly it makes each defect, 0 to 1; defects that it does not make are left out */
  readonly makes: Readonly<Partial<Record<Defect, number>>>;
  readonly speaks: (run: RunFigures) => Evidence | undefined;
  /** Key of a source of the trade, or `TRADE`: common practice, no source */
  readonly source: string;
}
