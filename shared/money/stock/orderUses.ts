import type { MoneyBook } from '../../book/book.ts';
import type { BookIndex, OrderRow } from '../../book/bookIndex.ts';
import type { Missing } from '../../book/missingCells.ts';
import { planLayers } from '../../plan/amounts/planLayers.ts';
import { planPieces } from '../../plan/amounts/planPieces.ts';
import { contradictingSettings } from '../../plan/facts/contradictingSettings.ts';
import { findOrder } from '../../plan/facts/findOrder.ts';
import { type Uses, usesOf } from './usesOf.ts';

/** What was poured in one run, of which so many came out good. */
export interface RunPoured {
  readonly poured: number;
  readonly good: number;
  /** Whether another run of the order took what goes with it once. */
  readonly isOrderSupplied: boolean;
}

export type OrderUses =
  | (Uses & { readonly kind: 'uses' })
  | { readonly kind: 'missing'; readonly missing: readonly Missing[] };

/**
 * What an order takes of every material: as its plan pours it, or for the pieces that one of its runs poured. The same
 * layers and doses as the plan's, without the heat, so that hundreds of orders take no time.
 */
export function orderUses(
  index: BookIndex,
  row: OrderRow,
  supplies: MoneyBook['supplies'],
  run?: RunPoured,
): OrderUses {
  const { shop } = index.book;
  const found = findOrder(index, row);
  if (found.kind === 'missing') return found;
  const { facts } = found;
  const contradictions = contradictingSettings(facts, shop);
  if (contradictions.length > 0) return { kind: 'missing', missing: contradictions };
  const planned = planPieces(index, facts);
  if (planned.kind === 'unreachable') return noPieces(row, planned.because);
  const { pieces } = planned;
  const toPour = run?.poured ?? pieces.toPour;
  const layers = planLayers(facts, { ...pieces, toPour }, shop).map(({ plan }) => plan);
  const poured = { mold: facts.mold.name, layers, quantity: run?.good ?? facts.quantity };
  const terms = {
    supplies,
    packPieces: shop.packPieces,
    isOrderSupplied: run?.isOrderSupplied ?? false,
  };
  return { kind: 'uses', ...usesOf(index, poured, terms) };
}

function noPieces({ row }: OrderRow, because: string): OrderUses {
  const text = `no number of pieces is enough: ${because}`;
  return { kind: 'missing', missing: [{ sheet: 'Orders', row, heading: 'Quantity', text }] };
}
