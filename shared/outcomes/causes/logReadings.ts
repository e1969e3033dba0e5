import { POUR_LOG, TEAR_KEYS, type TEAR_TESTS } from '../../book/tables/pourLog.ts';
import type { PourLogRecord } from '../../book/tables.ts';
import { GAP_KEYS, POUR_KEYS } from '../../log/formColumn.ts';

export type TearTest = Exclude<(typeof TEAR_TESTS)[number], 'not tested'>;

/** What one row of the log says about the heat of its round; degC, s. */
export interface LogReadings {
  readonly moldTop?: number | undefined;
  /** One per layer of the pattern, the lowest first */
  readonly pours: readonly (number | undefined)[];
  /** One per joint */
  readonly gaps: readonly (number | undefined)[];
  readonly tears: readonly (TearTest | undefined)[];
  /** For all joints without a test of their own: how the weakest came apart */
  readonly wholeTear?: TearTest;
  /** Headings of what was left blank */
  readonly blanks: readonly string[];
}

/** A gap written as 0 was shorter than the log's tenth of a minute; the layer still landed after the other [s]. */
const SHORTEST_GAP = 1;

/** The readings of a row, for a pattern of so many layers. */
export function logReadings(record: PourLogRecord, layers: number): LogReadings {
  const pourKeys = POUR_KEYS.slice(0, layers);
  const gapKeys = GAP_KEYS.slice(0, Math.max(0, layers - 1));
  const keys = ['moldTop', ...pourKeys, ...gapKeys] as const;
  const wholeTear = tested(record.tearTest);
  return {
    moldTop: record.moldTop,
    pours: pourKeys.map((key) => record[key]),
    gaps: gapKeys.map((key) => {
      const gap = record[key];
      return gap === undefined ? undefined : Math.max(SHORTEST_GAP, gap);
    }),
    tears: TEAR_KEYS.slice(0, gapKeys.length).map((key) => tested(record[key])),
    ...(wholeTear === undefined ? {} : { wholeTear }),
    blanks: keys
      .filter((key) => record[key] === undefined)
      .map((key) => POUR_LOG.columns[key].heading),
  };
}

function tested(tear: (typeof TEAR_TESTS)[number] | undefined): TearTest | undefined {
  return tear === 'not tested' ? undefined : tear;
}
