import type { Book } from '../../book/book.ts';
import { currentLogRows } from '../../book/currentLogRows.ts';
import type { PourLogRecord } from '../../book/tables.ts';
import { GAP_KEYS, POUR_KEYS } from '../../log/formColumn.ts';
import { MEASURES, type UnitSystem } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';

/** What the log may be sorted by. */
export const YIELD_BY = [
  'mold',
  'pattern',
  'mold and pattern',
  'layers',
  'person',
  'mold top',
  'month',
] as const;

export type YieldBy = (typeof YIELD_BY)[number];

/** Rows of the log that belong together. */
export interface LogGroup {
  /** As people write it; "" where the rows do not say */
  readonly group: string;
  readonly good: number;
  readonly poured: number;
  readonly rounds: number;
}

export interface LogGroups {
  /** Numbers, bands and months upward, names by their letters; rows that do not say come last. */
  readonly groups: readonly LogGroup[];
  /** Rows of the sheet left out: no poured or no good pieces, or more good than poured. */
  readonly leftOut: readonly number[];
}

/** Width of a band of the mold top in the shop's own degrees. */
const BAND: Readonly<Record<UnitSystem, number>> = { US: 20, metric: 10 };

interface GroupKey {
  readonly label: string;
  /** Where it stands among numbers; names have none */
  readonly place?: number;
}

/**
 * Good and poured pieces of the log by what the shop wants to know; corrected rows count once.
 * @param pourLog in the order of the sheet
 */
export function yieldGroups(pourLog: Book['pourLog'], by: YieldBy, system: UnitSystem): LogGroups {
  const sums = new Map<string, { key: GroupKey; good: number; poured: number; rounds: number }>();
  const leftOut: number[] = [];
  for (const { row, record } of currentLogRows(pourLog)) {
    const { good, poured } = record;
    if (good === undefined || poured === undefined || good > poured) {
      leftOut.push(row);
      continue;
    }
    const key = keyOf(record, by, system);
    const name = key.label.toLowerCase();
    const sum = sums.get(name) ?? { key, good: 0, poured: 0, rounds: 0 };
    sums.set(name, sum);
    sum.good += good;
    sum.poured += poured;
    sum.rounds += 1;
  }
  const sorted = [...sums.values()].sort((one, other) => inOrder(one.key, other.key));
  return { groups: sorted.map(({ key, ...sum }) => ({ group: key.label, ...sum })), leftOut };
}

function keyOf(record: PourLogRecord, by: YieldBy, system: UnitSystem): GroupKey {
  switch (by) {
    case 'mold':
      return { label: record.mold ?? '' };
    case 'pattern':
      return { label: record.pattern ?? '' };
    case 'mold and pattern':
      return { label: [record.mold ?? '', record.pattern ?? ''].filter(Boolean).join(', ') };
    case 'person':
      return { label: record.who ?? '' };
    case 'layers':
      return layersKey(record);
    case 'mold top':
      return bandKey(record.moldTop, system);
    case 'month':
      return { label: /^\d{4}-\d\d/.exec(record.loggedAt ?? '')?.[0] ?? '' };
  }
}

/** Layers by the highest that has a reading. */
function layersKey(record: PourLogRecord): GroupKey {
  const poured = POUR_KEYS.map((key) => record[key] !== undefined).lastIndexOf(true) + 1;
  const waited = GAP_KEYS.map((key) => record[key] !== undefined).lastIndexOf(true) + 2;
  const layers = Math.max(poured, waited === 1 ? 0 : waited);
  return layers === 0 ? { label: '' } : { label: String(layers), place: layers };
}

function bandKey(moldTop: number | undefined, system: UnitSystem): GroupKey {
  if (moldTop === undefined) return { label: '' };
  const unit = MEASURES.temperature[system];
  const width = BAND[system];
  // A reading typed as 220 must not fall into the band below by a binary digit.
  const read = Number(fromEngine(moldTop, unit).toPrecision(12));
  const from = Math.floor(read / width) * width;
  return { label: `${from} to ${from + width} ${UNITS[unit].label}`, place: from };
}

function inOrder(one: GroupKey, other: GroupKey): number {
  if (one.label === '' || other.label === '')
    return Number(one.label === '') - Number(other.label === '');
  if (one.place !== undefined && other.place !== undefined) return one.place - other.place;
  return one.label < other.label ? -1 : 1;
}
