import { nameKey } from '../../book/bookIndex.ts';
import type { MissingCells } from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';
import type { UnitName } from '../../units/units.ts';
import type { TrialBook } from '../trialBook.ts';
import { type HeatRow, heatRow, noteHeat } from './heatRow.ts';

/** One heating with its readings by time; engine units. */
export interface Heating {
  readonly trial: string;
  readonly date?: string;
  readonly mold: string;
  readonly setting: number;
  readonly roomTemperature: number;
  readonly moldsOnPlate: number;
  readonly start: 'cold' | 'hot';
  readonly lid: 'none' | 'lid';
  readonly readings: readonly {
    readonly row: number;
    readonly seconds: number;
    readonly top: number;
  }[];
}

/**
 * The heatings of every plate, in the order of their first rows. Readings may stand in any order; a row that contradicts
 * the ones before it is left out and noted.
 */
export function gatherHeat(
  book: TrialBook,
  gaps: MissingCells,
): ReadonlyMap<string, readonly Heating[]> {
  const trials = new Map<string, HeatRow[]>();
  for (const row of book.heatTrials) {
    const read = heatRow(gaps, row);
    if (read === undefined) continue;
    const key = nameKey(read.trial);
    const others = trials.get(key) ?? [];
    if (isAtOdds(gaps, read, others)) continue;
    trials.set(key, [...others, read]);
  }
  const plates = new Map<string, Heating[]>();
  for (const rows of trials.values()) {
    const heating = heatingOf(gaps, rows);
    const key = nameKey(rows[0]?.plate);
    if (heating) plates.set(key, [...(plates.get(key) ?? []), heating]);
  }
  return plates;
}

const SHARED: readonly {
  readonly key: keyof HeatRow & keyof typeof TABLES.heatTrials.columns;
  readonly unit?: UnitName;
}[] = [
  { key: 'mold' },
  { key: 'plate' },
  { key: 'setting', unit: 'degC' },
  { key: 'date' },
  { key: 'roomTemperature', unit: 'degC' },
  { key: 'moldsOnPlate' },
  { key: 'start' },
  { key: 'lid' },
];

/** Whether a row says otherwise than an earlier one of its trial, or has the same time; that is noted. */
function isAtOdds(gaps: MissingCells, row: HeatRow, others: readonly HeatRow[]): boolean {
  const twin = others.find(({ seconds }) => seconds === row.seconds);
  if (twin) {
    const wanted = `another time than in row ${twin.row}, of the same trial`;
    noteHeat(gaps, row.row, 'Minutes', {
      rule: { kind: 'form', wanted },
      value: row.seconds / 60,
      unit: 'min',
    });
    return true;
  }
  for (const { key, unit } of SHARED) {
    const given = row[key];
    const first = others.find((other) => other[key] !== undefined);
    if (given === undefined || first === undefined || nameKey(given) === nameKey(first[key]))
      continue;
    const wanted = `as in row ${first.row}, of the same trial`;
    const heading = TABLES.heatTrials.columns[key].heading;
    noteHeat(gaps, row.row, heading, { rule: { kind: 'form', wanted }, value: given, unit });
    return true;
  }
  return false;
}

/** A trial's rows as one heating, or undefined with its gap noted. */
function heatingOf(gaps: MissingCells, rows: readonly HeatRow[]): Heating | undefined {
  const [first] = rows;
  if (first === undefined) return undefined;
  const given = <Key extends keyof HeatRow>(key: Key) =>
    rows.find((row) => row[key] !== undefined)?.[key];
  const roomTemperature = given('roomTemperature') ?? gaps.index.book.shop.roomTemperature;
  const date = given('date');
  if (first.setting <= roomTemperature) {
    noteHeat(gaps, first.row, 'Setting', {
      rule: { kind: 'greater than', limit: roomTemperature, what: 'room temperature' },
      value: first.setting,
      unit: 'degC',
    });
    return undefined;
  }
  return {
    trial: first.trial,
    ...(date === undefined ? {} : { date }),
    mold: first.mold,
    setting: first.setting,
    roomTemperature,
    moldsOnPlate: given('moldsOnPlate') ?? 1,
    start: given('start') ?? 'cold',
    lid: given('lid') ?? 'none',
    readings: rows
      .map(({ row, seconds, top }) => ({ row, seconds, top }))
      .sort((one, other) => one.seconds - other.seconds),
  };
}
