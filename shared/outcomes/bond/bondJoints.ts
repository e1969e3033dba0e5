import type { BookIndex } from '../../book/bookIndex.ts';
import { currentLogRows } from '../../book/currentLogRows.ts';
import type { PourLogRecord } from '../../book/tables.ts';
import type { TornJoint } from '../../quality/bond/bondFit.ts';
import { listText } from '../../words/quantityText.ts';
import { loggedFacts } from '../causes/loggedFacts.ts';
import { type LogReadings, logReadings, type TearTest } from '../causes/logReadings.ts';
import { runHeat } from '../causes/runHeat.ts';

/** A joint of the log that was torn. */
export interface LoggedJoint extends TornJoint {
  /** Of *Pour log* */
  readonly row: number;
  readonly run: string;
  /** Layer below, from 1 */
  readonly below: number;
}

/** A row with a tear test that could not be used, and why. */
interface RowLeftOut {
  readonly row: number;
  readonly because: string;
}

export interface JointsFound {
  readonly joints: readonly LoggedJoint[];
  readonly leftOut: readonly RowLeftOut[];
  /** Tested rows of two-piece molds: there the innermost plastic stands for the surface, so contacts are limits, not readings */
  readonly twoPiece: number;
}

/** The latest tested rows only, so that a log of many years is worked out in a second; older ones are the shop of then. */
const MOST_ROWS = 300;

/**
 * Every torn joint of the rows that count, with its contact temperature from the row's own readings.
 *
 * A piece torn whole says how its weakest joint held. When it tears through, all joints without a test of their own bonded;
 * when it peels or tears in part, only the coolest of them is taken to have done so, and the others say nothing.
 */
export function bondJoints(index: BookIndex): JointsFound {
  const rows = currentLogRows(index.book.pourLog).filter(({ record }) => isTorn(record));
  const found = rows.slice(-MOST_ROWS).map(({ row, record }) => jointsOf(index, row, record));
  return {
    joints: found.flatMap((one) => (typeof one === 'object' && 'joints' in one ? one.joints : [])),
    leftOut: found.filter((one) => typeof one === 'object' && 'because' in one),
    twoPiece: found.filter((one) => one === 'two-piece').length,
  };
}

const TESTS = ['tearTest', 'tear12', 'tear23', 'tear34', 'tear45'] as const;

function isTorn(record: PourLogRecord): boolean {
  return TESTS.some((key) => record[key] !== undefined && record[key] !== 'not tested');
}

function jointsOf(
  index: BookIndex,
  row: number,
  record: PourLogRecord,
): RowLeftOut | { readonly joints: readonly LoggedJoint[] } | 'two-piece' {
  const found = loggedFacts(index, record);
  if (found.kind === 'missing') return { row, because: found.missing[0]?.text ?? '' };
  const { layers } = found.facts.pattern;
  if (layers.length < 2) return { joints: [] };
  if (found.facts.mold.kind === 'two-piece') return 'two-piece';
  const readings = logReadings(record, layers.length);
  const contacts = runHeat(index, found.facts, readings).flatMap(({ joint }) =>
    joint ? [joint.contactTemperature] : [],
  );
  const tears = tearsOf(readings, contacts);
  const isWhole = contacts.length === layers.length - 1;
  if (!isWhole && tears.every((tear) => tear === undefined))
    return {
      row,
      because: `${listText(readings.blanks).toLowerCase()} must be given, got nothing`,
    };
  return {
    joints: tears.flatMap((tear, joint) => {
      const contactTemperature = contacts[joint];
      if (tear === undefined || contactTemperature === undefined) return [];
      return [{ row, run: record.run ?? '', below: joint + 1, contactTemperature, tear }];
    }),
  };
}

/** The test of each joint that was solved. */
function tearsOf(
  { tears, wholeTear }: LogReadings,
  contacts: readonly number[],
): readonly (TearTest | undefined)[] {
  const own = contacts.map((_, joint) => tears[joint]);
  if (wholeTear === undefined) return own;
  if (wholeTear === 'tears through') return own.map((tear) => tear ?? wholeTear);
  // Which joint was the coolest is known only when all of them are.
  if (contacts.length < tears.length) return own;
  const open = contacts.filter((_, joint) => own[joint] === undefined);
  const coolest = contacts.indexOf(Math.min(...open));
  return own.map((tear, joint) => tear ?? (joint === coolest ? wholeTear : undefined));
}
