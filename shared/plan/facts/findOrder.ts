import { type BookIndex, nameKey, type OrderRow } from '../../book/bookIndex.ts';
import {
  addRefused,
  findByName,
  findOnce,
  type Missing,
  type MissingCells,
  need,
  optional,
} from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';
import { type DoseFacts, findDoses } from './findDoses.ts';
import { findMold, type MoldFacts } from './findMold.ts';
import { findPattern, type PatternFacts } from './findPattern.ts';
import { findPlate, type PlateFacts } from './findPlate.ts';
import { type LayerFill, layerShares } from './layerShares.ts';

/** Everything about an order that the plan is computed from, found and complete. */
export interface OrderFacts {
  readonly row: OrderRow;
  readonly order: string;
  readonly quantity: number;
  readonly moldsInUse: number;
  readonly mold: MoldFacts;
  readonly pattern: PatternFacts;
  readonly fills: readonly LayerFill[];
  readonly doses: readonly (readonly DoseFacts[])[];
  readonly plate: PlateFacts;
}

export type FoundOrder =
  | { readonly kind: 'found'; readonly facts: OrderFacts }
  | { readonly kind: 'missing'; readonly missing: readonly Missing[] };

/** Looks up what an order row names in every other sheet; all gaps are listed at once, each with its place. */
export function findOrder(index: BookIndex, row: OrderRow): FoundOrder {
  const gaps: MissingCells = { index, system: index.book.shop.units, missing: [] };
  const facts = factsOf(gaps, row);
  return facts && gaps.missing.length === 0
    ? { kind: 'found', facts }
    : { kind: 'missing', missing: gaps.missing };
}

function factsOf(gaps: MissingCells, row: OrderRow): OrderFacts | undefined {
  const order = need(gaps, TABLES.orders, row, 'order');
  const quantity = need(gaps, TABLES.orders, row, 'quantity');
  const moldName = need(gaps, TABLES.orders, row, 'mold');
  const patternName = need(gaps, TABLES.orders, row, 'pattern');
  const place = { sheet: 'Orders', row: row.row, heading: 'Mold', where: 'Molds' } as const;
  const moldRow = findByName(gaps, gaps.index.molds, moldName, place);
  const mold =
    moldRow && findOnce(gaps, nameKey('mold', moldName), (own) => findMold(own, moldRow));
  const pattern = patternName === undefined ? undefined : findPattern(gaps, row, patternName);
  const recipe = pattern && nameKey(pattern.name, pattern.version);
  const fills =
    mold &&
    pattern &&
    findOnce(gaps, nameKey('fills', mold.name, recipe), (own) => layerShares(own, mold, pattern));
  const doses =
    pattern && findOnce(gaps, nameKey('doses', recipe), (own) => findDoses(own, pattern));
  const plate = findPlate(gaps, row);
  const moldsInUse = optional(gaps, TABLES.orders, row, 'moldsInUse') ?? 1;
  optional(gaps, TABLES.orders, row, 'firstPour');
  if (mold) noteTooManyMolds(gaps, row, mold, moldsInUse);
  if (order === undefined || quantity === undefined || mold === undefined) return undefined;
  if (pattern === undefined || fills === undefined || doses === undefined || plate === undefined)
    return undefined;
  return { row, order, quantity, moldsInUse, mold, pattern, fills, doses, plate };
}

function noteTooManyMolds(
  gaps: MissingCells,
  row: OrderRow,
  mold: MoldFacts,
  moldsInUse: number,
): void {
  if (moldsInUse <= mold.owned) return;
  addRefused(
    gaps,
    { sheet: 'Orders', row: row.row, heading: 'Molds in use' },
    {
      field: 'molds in use',
      rule: { kind: 'at most', limit: mold.owned, what: `the copies of ${mold.name} owned` },
      value: moldsInUse,
    },
  );
}
