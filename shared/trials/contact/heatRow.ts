import type { MoldRow } from '../../book/bookIndex.ts';
import {
  addRefused,
  findByName,
  type MissingCells,
  need,
  optional,
} from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';
import type { InputFacts } from '../../errors/InputError.ts';
import type { MoldBlock } from '../../plan/heat/plateSetup.ts';
import type { HeatTrialRow } from '../trialBook.ts';

/** One row of Heat trials with all that a reading needs; engine units. */
export interface HeatRow {
  readonly row: number;
  readonly trial: string;
  readonly mold: string;
  readonly plate: string;
  readonly setting: number;
  readonly seconds: number;
  readonly top: number;
  readonly date: string | undefined;
  readonly roomTemperature: number | undefined;
  readonly moldsOnPlate: number | undefined;
  readonly start: 'cold' | 'hot' | undefined;
  readonly lid: 'none' | 'lid' | undefined;
}

/** A row as a reading, or undefined with every gap noted. */
export function heatRow(gaps: MissingCells, row: HeatTrialRow): HeatRow | undefined {
  const table = TABLES.heatTrials;
  const trial = need(gaps, table, row, 'trial');
  const mold = need(gaps, table, row, 'mold');
  const plate = need(gaps, table, row, 'plate');
  const setting = need(gaps, table, row, 'setting');
  const seconds = need(gaps, table, row, 'minutes');
  const top = need(gaps, table, row, 'topTemperature');
  const place = { sheet: table.sheet, row: row.row };
  const moldRow = findByName(gaps, gaps.index.molds, mold, {
    ...place,
    heading: 'Mold',
    where: 'Molds',
  });
  const plateRow = findByName(gaps, gaps.index.plates, plate, {
    ...place,
    heading: 'Plate',
    where: 'Plates',
  });
  const others = {
    date: optional(gaps, table, row, 'date'),
    roomTemperature: optional(gaps, table, row, 'roomTemperature'),
    moldsOnPlate: optional(gaps, table, row, 'moldsOnPlate'),
    start: optional(gaps, table, row, 'start'),
    lid: optional(gaps, table, row, 'lid'),
  };
  if (
    trial === undefined ||
    mold === undefined ||
    plate === undefined ||
    setting === undefined ||
    seconds === undefined ||
    top === undefined ||
    moldRow === undefined ||
    plateRow === undefined
  )
    return undefined;
  return { row: row.row, trial, mold, plate, setting, seconds, top, ...others };
}

/** The block of a mold, whatever else its row lacks; undefined with every gap noted. */
export function moldBlock(gaps: MissingCells, row: MoldRow): MoldBlock | undefined {
  const blockLength = need(gaps, TABLES.molds, row, 'blockLength');
  const blockWidth = need(gaps, TABLES.molds, row, 'blockWidth');
  const blockHeight = need(gaps, TABLES.molds, row, 'blockHeight');
  const finish = optional(gaps, TABLES.molds, row, 'finish') ?? 'bare';
  if (blockLength === undefined || blockWidth === undefined || blockHeight === undefined)
    return undefined;
  return { blockLength, blockWidth, blockHeight, finish };
}

/** Notes what is wrong with a cell of Heat trials. */
export function noteHeat(
  gaps: MissingCells,
  row: number,
  heading: string,
  facts: Omit<InputFacts, 'field'>,
) {
  const place = { sheet: TABLES.heatTrials.sheet, row, heading };
  addRefused(gaps, place, { field: heading.toLowerCase(), ...facts });
}
