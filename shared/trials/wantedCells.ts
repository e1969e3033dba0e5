import { boundsIn } from '../book/reading/parseCell.ts';
import { describe } from '../errors/describe.ts';
import { brokenRule } from '../errors/requireNumber.ts';
import type { UnitSystem } from '../units/measures.ts';
import { fromEngine } from '../units/toEngine.ts';
import {
  FIGURE_PARTS,
  type FigureCell,
  type FigureName,
  figureCell,
  isSame,
} from './figureCell.ts';
import { figureLimits } from './figureLimits.ts';
import type { FigureKey, TrialResult } from './proposal.ts';
import type { TrialBook } from './trialBook.ts';

/** A cell beside what the trials would have it hold; engine units. */
export interface WantedCell extends FigureCell {
  readonly wanted: number;
  readonly standardError?: number;
}

type Fitted = Extract<TrialResult, { readonly kind: 'fitted' }>;

/** The cells that a fitted figure goes into; a cell that the readings do not tell is not among them. */
export function wantedCells(
  book: TrialBook,
  { figure, of }: { readonly figure: FigureKey; readonly of: string },
  fitted: Fitted,
): readonly WantedCell[] {
  const [own, error, loss] = FIGURE_PARTS[figure];
  const { value, standardError } = fitted.figure;
  return [
    ...wantedCell(book, of, own, value, standardError),
    ...(error ? wantedCell(book, of, error, standardError) : []),
    ...(loss && fitted.heatLoss
      ? wantedCell(book, of, loss, fitted.heatLoss.value, fitted.heatLoss.standardError)
      : []),
  ];
}

function wantedCell(
  book: TrialBook,
  of: string,
  name: FigureName,
  wanted: number,
  standardError?: number,
): readonly WantedCell[] {
  const cell = figureCell(book, name, of);
  if (cell === undefined) return [];
  return [{ ...cell, wanted, ...(standardError === undefined ? {} : { standardError }) }];
}

export function isInUse(cells: readonly WantedCell[]): boolean {
  return cells.length > 0 && cells.every(({ value, wanted }) => isSame(value, wanted));
}

/** Why a cell would refuse what it is wanted to hold, in the user's units; undefined when none does. */
export function beyondCell(cells: readonly WantedCell[], system: UnitSystem): string | undefined {
  for (const { name, wanted } of cells) {
    const { bounds, unit } = figureLimits(name, system);
    if (brokenRule(wanted, bounds) === undefined) continue;
    const value = unit ? fromEngine(wanted, unit) : wanted;
    const rule = brokenRule(value, unit ? boundsIn(bounds, unit) : bounds);
    if (rule) return describe({ field: name, rule, value, unit });
  }
  return undefined;
}
