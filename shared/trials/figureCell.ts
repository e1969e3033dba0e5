import { nameKey } from '../book/bookIndex.ts';
import type { FIGURE_NAMES } from '../book/tables/measuredFigures.ts';
import type { FigureKey } from './proposal.ts';
import type { TrialBook } from './trialBook.ts';

/** A figure as the journal names it. */
export type FigureName = (typeof FIGURE_NAMES)[number];

type NumberKey =
  | 'contactConductance'
  | 'contactError'
  | 'heatLoss'
  | 'setTemperature'
  | 'dropVolume';

/** Where a figure stands in the book. */
type FigureHome =
  | { readonly sheet: 'plates' | 'materials'; readonly key: NumberKey }
  | { readonly sheet: 'shop'; readonly key: 'microwaveEfficiency' | 'bondTemperature' };

/** Where each figure that trials give stands in the book. */
export const FIGURE_HOMES: Readonly<Record<FigureName, FigureHome>> = {
  'contact conductance': { sheet: 'plates', key: 'contactConductance' },
  'contact error': { sheet: 'plates', key: 'contactError' },
  'heat loss': { sheet: 'plates', key: 'heatLoss' },
  'set temperature': { sheet: 'materials', key: 'setTemperature' },
  'drop volume': { sheet: 'materials', key: 'dropVolume' },
  'microwave efficiency': { sheet: 'shop', key: 'microwaveEfficiency' },
  'bond temperature': { sheet: 'shop', key: 'bondTemperature' },
};

/** The cells that one measured figure may write, the figure's own first. */
export const FIGURE_PARTS: Readonly<Record<FigureKey, readonly [FigureName, ...FigureName[]]>> = {
  contact: ['contact conductance', 'contact error', 'heat loss'],
  setTemperature: ['set temperature'],
  dropVolume: ['drop volume'],
  microwaveEfficiency: ['microwave efficiency'],
  bondTemperature: ['bond temperature'],
};

/** One cell of the book that holds a figure; engine units. */
export interface FigureCell {
  readonly name: FigureName;
  readonly home: FigureHome;
  /** Row on its sheet; absent for the shop, whose rows are found by their words */
  readonly row?: number;
  /** Absent when the cell is blank or was refused */
  readonly value?: number;
}

/** The cell of a figure as the book holds it now, or undefined when its plate or material is not there. */
export function figureCell(book: TrialBook, name: FigureName, of: string): FigureCell | undefined {
  const home = FIGURE_HOMES[name];
  const { index } = book;
  if (home.sheet === 'shop') return { name, home, value: index.book.shop[home.key] };
  const found = index[home.sheet].get(nameKey(of));
  if (found === undefined) return undefined;
  const record: Readonly<Partial<Record<NumberKey, number | undefined>>> = found.record;
  const value = record[home.key];
  return { name, home, row: found.row, ...(value === undefined ? {} : { value }) };
}

/** Whether two cells hold the same: equal but for the last digits of a conversion, or both blank. */
export function isSame(one: number | undefined, other: number | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
}
