import type { Book } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import { currentLogRows } from '../../book/currentLogRows.ts';
import { DEFECT_KEYS } from '../../book/tables/pourLog.ts';
import { pieceWeights } from '../../log/pieceWeights.ts';

type DefectKey = (typeof DEFECT_KEYS)[number];

/** One row of the log that counts and does not contradict itself. */
export interface LoggedRound {
  /** Row of *Pour log*. */
  readonly row: number;
  readonly run: string;
  /** `R-1002 round 1`, or the run with its row where no round is named. */
  readonly label: string;
  /** `yyyy-mm-dd`; absent where the row does not say when. */
  readonly day?: string;
  readonly mold: string;
  readonly pattern: string;
  readonly version?: number;
  readonly poured: number;
  readonly good: number;
  /** [degC] */
  readonly moldTop?: number;
  readonly defects: Readonly<Partial<Record<DefectKey, number>>>;
  /** [kg] */
  readonly weights: readonly number[];
}

/** What to look at; blank or absent takes everything. */
export interface Scope {
  readonly mold?: string | undefined;
  readonly pattern?: string | undefined;
}

/** Rounds of the log in the order of the sheet. */
export function loggedRounds({
  pourLog,
  shop,
}: Pick<Book, 'pourLog' | 'shop'>): readonly LoggedRound[] {
  return currentLogRows(pourLog).flatMap(({ row, record }) => {
    const { run, mold, pattern, version, poured, good, moldTop } = record;
    if (run === undefined || mold === undefined || pattern === undefined) return [];
    if (poured === undefined || good === undefined || good > poured) return [];
    const day = /^\d{4}-\d\d-\d\d/.exec(record.loggedAt ?? '')?.[0];
    const place = record.round === undefined ? `row ${row}` : `round ${record.round}`;
    const round: LoggedRound = {
      ...{ row, run, mold, pattern, poured, good },
      label: `${run} ${place}`,
      defects: defectsOf(record),
      weights: pieceWeights(record, shop.units),
      ...(day === undefined ? {} : { day }),
      ...(version === undefined ? {} : { version }),
      ...(moldTop === undefined ? {} : { moldTop }),
    };
    return [round];
  });
}

function defectsOf(record: Partial<Record<DefectKey, number | undefined>>): LoggedRound['defects'] {
  const defects: Partial<Record<DefectKey, number>> = {};
  for (const key of DEFECT_KEYS) {
    const count = record[key];
    if (count !== undefined && count > 0) defects[key] = count;
  }
  return defects;
}

export function inScope(rounds: readonly LoggedRound[], { mold, pattern }: Scope) {
  const [moldKey, patternKey] = [nameKey(mold), nameKey(pattern)];
  return rounds.filter(
    (round) =>
      (moldKey === '' || nameKey(round.mold) === moldKey) &&
      (patternKey === '' || nameKey(round.pattern) === patternKey),
  );
}

/** Names in the order they first came, each once whatever its case. */
export function namesOf(
  rounds: readonly LoggedRound[],
  key: 'mold' | 'pattern',
): readonly string[] {
  const names = new Map<string, string>();
  for (const round of rounds) {
    const name = nameKey(round[key]);
    if (!names.has(name)) names.set(name, round[key]);
  }
  return [...names.values()];
}
