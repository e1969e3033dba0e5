import type { Book } from '../../book/book.ts';
import type { BookIndex } from '../../book/bookIndex.ts';
import { type NamedRound, namedRound } from './badRounds.ts';
import { diagnoseRow, type RowDiagnosis } from './diagnoseRow.ts';
import { named, type RunCause, runCauses } from './runCauses.ts';

/** A defect that the heat record does not explain. */
interface Unexplained {
  /** `Trapped air (2)` */
  readonly defect: string;
  /** Causes other than heat, most usual first; phrases */
  readonly checks: readonly string[];
}

/** What went wrong in one round, as panel and paper show it. */
export interface RoundCauses extends NamedRound {
  readonly mold: string;
  readonly pattern: string;
  /** Likeliest first */
  readonly causes: readonly RunCause[];
  readonly unexplained: readonly Unexplained[];
  /** Defects of which too little was read to say */
  readonly unread: readonly Unexplained[];
  /** Bad pieces with no defect named */
  readonly unnamed: number;
  /** What the heat record shows, a phrase */
  readonly record?: string;
  /** Headings of readings that are blank */
  readonly blanks: readonly string[];
  /** The faces between layers of a two-piece mold are not judged */
  readonly isTwoPiece: boolean;
  /** Why the round cannot be looked into, a sentence's phrase */
  readonly noPlan?: string;
}

/** The causes of everything bad in one row of the log. */
export function roundCauses(index: BookIndex, row: Book['pourLog'][number]): RoundCauses {
  const { mold = '', pattern = '' } = row.record;
  const found = diagnoseRow(index, row.record);
  const round = { ...namedRound(row), mold, pattern };
  if (found.kind === 'no plan')
    return {
      ...round,
      causes: [],
      unexplained: [],
      unread: [],
      unnamed: 0,
      blanks: [],
      isTwoPiece: false,
      noPlan: found.because,
    };
  const { diagnoses, unnamed, record, blanks, isTwoPiece } = found;
  return {
    ...round,
    causes: runCauses(diagnoses),
    unexplained: withVerdict(diagnoses, 'not by heat'),
    unread: withVerdict(diagnoses, 'unread'),
    unnamed,
    ...(record === undefined ? {} : { record }),
    blanks,
    isTwoPiece,
  };
}

type Diagnoses = Extract<RowDiagnosis, { readonly kind: 'diagnosed' }>['diagnoses'];

function withVerdict(
  diagnoses: Diagnoses,
  verdict: Diagnoses[number]['verdict'],
): readonly Unexplained[] {
  return diagnoses
    .filter((one) => one.verdict === verdict)
    .map((one) => ({ defect: named(one), checks: one.checks }));
}
