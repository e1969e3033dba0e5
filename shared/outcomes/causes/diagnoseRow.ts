import type { BookIndex } from '../../book/bookIndex.ts';
import { DEFECT_KEYS } from '../../book/tables/pourLog.ts';
import type { PourLogRecord } from '../../book/tables.ts';
import { type Diagnosis, diagnose, heatRecord } from './diagnose.ts';
import { type NoPlan, rowFigures } from './rowFigures.ts';
import type { Defect, RunFigures } from './runFigures.ts';

/** What a row of the log says went wrong, or why it cannot be looked into. */
export type RowDiagnosis =
  | {
      readonly kind: 'diagnosed';
      readonly diagnoses: readonly Diagnosis[];
      /** Bad pieces with no defect named */
      readonly unnamed: number;
      /** What the heat record shows, as a phrase */
      readonly record?: string;
      /** Headings of readings that are blank */
      readonly blanks: readonly string[];
      readonly isTwoPiece: boolean;
    }
  | NoPlan;

/** Likely causes of every kind of defect that a row counts, and of a joint that gave way in a tear test. */
export function diagnoseRow(index: BookIndex, record: PourLogRecord): RowDiagnosis {
  const run = rowFigures(index, record);
  if ('because' in run) return run;
  const diagnoses = defectsOf(record, run).map(({ defect, count }) => diagnose(run, defect, count));
  const told = diagnoses.reduce((sum, { count }) => sum + count, 0);
  const shown = heatRecord(run);
  return {
    kind: 'diagnosed',
    diagnoses,
    unnamed: Math.max(0, (record.poured ?? 0) - (record.good ?? 0) - told),
    ...(shown === undefined ? {} : { record: shown }),
    blanks: run.blanks,
    isTwoPiece: run.isTwoPiece,
  };
}

function defectsOf(record: PourLogRecord, run: RunFigures) {
  const counted = DEFECT_KEYS.flatMap((defect): { defect: Defect; count: number }[] => {
    const count = record[defect] ?? 0;
    return count > 0 ? [{ defect, count }] : [];
  });
  const gaveWay = [record.tearTest, ...run.joints.map(({ tear }) => tear)].some(
    (tear) => tear === 'peels clean' || tear === 'tears in part',
  );
  const isCounted = counted.some(({ defect }) => defect === 'peeledLayer');
  return gaveWay && !isCounted
    ? [...counted, { defect: 'peeledLayer' as const, count: 0 }]
    : counted;
}
