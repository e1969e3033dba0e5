import { nameKey } from '../../book/bookIndex.ts';
import {
  addMissing,
  findByName,
  type MissingCells,
  need,
  optional,
} from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';
import { describeIn } from '../../errors/describeIn.ts';
import { InputError } from '../../errors/InputError.ts';
import type { BenchTrialRow, TrialBook } from '../trialBook.ts';

type Kind = NonNullable<BenchTrialRow['record']['kind']>;

/** Rows of Bench trials of one kind and, but for the microwave, of one material. */
export interface BenchGroup {
  readonly kind: Kind;
  /** As Materials writes it; `""` for the microwave */
  readonly material: string;
  readonly rows: readonly BenchTrialRow[];
}

/** Rows of Bench trials that belong together; a row that lacks its kind or its material is noted and left out. */
export function gatherBench(book: TrialBook, gaps: MissingCells): readonly BenchGroup[] {
  const groups = new Map<string, { kind: Kind; material: string; rows: BenchTrialRow[] }>();
  for (const row of book.benchTrials) {
    const trial = need(gaps, TABLES.benchTrials, row, 'trial');
    const kind = need(gaps, TABLES.benchTrials, row, 'kind');
    if (trial === undefined || kind === undefined) continue;
    const material = kind === 'microwave' ? '' : materialOf(gaps, row);
    if (material === undefined) continue;
    const key = nameKey(kind, material);
    const group = groups.get(key) ?? { kind, material, rows: [] };
    groups.set(key, group);
    group.rows.push(row);
  }
  return [...groups.values()];
}

function materialOf(gaps: MissingCells, row: BenchTrialRow): string | undefined {
  const name = need(gaps, TABLES.benchTrials, row, 'material');
  const { sheet } = TABLES.benchTrials;
  const place = { sheet, row: row.row, heading: 'Material', where: 'Materials' } as const;
  return findByName(gaps, gaps.index.materials, name, place)?.record.material;
}

type NumberKey =
  | 'weight'
  | 'drops'
  | 'startTemperature'
  | 'endTemperature'
  | 'seconds'
  | 'tiltEvery'
  | 'layerThickness'
  | 'moldTop'
  | 'cupTemperature';

/** Numbers of a row, each of them needed, or undefined with every gap noted. */
export function benchNumbers<Key extends NumberKey>(
  gaps: MissingCells,
  row: BenchTrialRow,
  keys: readonly Key[],
): Readonly<Record<Key, number>> | undefined {
  const numbers: Partial<Record<Key, number>> = {};
  let isWhole = true;
  optional(gaps, TABLES.benchTrials, row, 'date');
  for (const key of keys) {
    const value: number | undefined = need(gaps, TABLES.benchTrials, row, key);
    if (value === undefined) isWhole = false;
    else numbers[key] = value;
  }
  return isWhole ? (numbers as Record<Key, number>) : undefined; // every key was set
}

/** What `measure` makes of a row; a figure that it refuses is noted as the row's and nothing comes back. */
export function measured<Value>(
  gaps: MissingCells,
  row: BenchTrialRow,
  measure: () => Value,
): Value | undefined {
  try {
    return measure();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { sheet } = TABLES.benchTrials;
    addMissing(gaps, {
      sheet,
      row: row.row,
      heading: 'Kind',
      text: describeIn(error, gaps.system),
    });
    return undefined;
  }
}
