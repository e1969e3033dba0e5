import type { WorkFacts } from '../../batch/minutesOfWork.ts';
import { type BookIndex, type Evidence, nameKey, remember } from '../../book/bookIndex.ts';
import type { Missing } from '../../book/missingCells.ts';
import type { Shop } from '../../book/settings/settings.ts';
import { contradictingSettings } from '../facts/contradictingSettings.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import { cookLimit, hardStop } from '../facts/hardStop.ts';
import { type PlannedCup, planCup } from '../heat/planCup.ts';
import type { OrderPlan, PiecesPlan } from '../planTypes.ts';
import { type PlannedLayer, planLayers } from './planLayers.ts';
import { planPieces } from './planPieces.ts';

/** What an order takes before plate and molds are looked at: pieces, layers, cups, hands. */
interface OrderAmounts
  extends Pick<OrderPlan, 'pieces' | 'plastisolVolume' | 'plastisolMass' | 'cups'> {
  readonly kind: 'amounts';
  readonly evidence: Evidence;
  readonly layers: readonly PlannedLayer[];
  readonly limits: Pick<OrderPlan, 'cookTemperature' | 'hardStop'>;
  readonly cup: PlannedCup;
  readonly work: WorkFacts;
}

/** The amounts of an order whose facts are complete, or what contradicts itself; no plate is heated. */
export function planAmounts(
  index: BookIndex,
  facts: OrderFacts,
): OrderAmounts | { readonly kind: 'missing'; readonly missing: readonly Missing[] } {
  const { shop } = index.book;
  const gaps = contradictingSettings(facts, shop);
  if (gaps.length > 0) return { kind: 'missing', missing: gaps };
  const planned = planPieces(index, facts);
  if (planned.kind === 'unreachable')
    return { kind: 'missing', missing: [noPieces(facts, planned.because)] };
  const { pieces, evidence } = planned;
  const layers = planLayers(facts, pieces, shop);
  const limits = remember(
    index,
    nameKey('limits', facts.pattern.name, facts.pattern.version),
    () => ({
      cookTemperature: cookLimit(facts, shop),
      hardStop: hardStop(facts, shop),
    }),
  );
  const cup = planCup(facts, pieces, layers, {
    ...shop,
    cookTemperature: limits.cookTemperature,
  });
  const cups = layers.reduce((sum, { plan }) => sum + plan.cups, 0);
  return {
    kind: 'amounts',
    pieces,
    evidence,
    layers,
    plastisolVolume: layers.reduce((sum, { batch }) => sum + batch.totalVolume, 0),
    plastisolMass: layers.reduce((sum, { batch }) => sum + batch.totalMass, 0),
    cups,
    limits,
    cup,
    work: workOf(facts, pieces, { cups, ovenTime: cup.ovenTime }, shop),
  };
}

function noPieces({ row, pattern, mold }: OrderFacts, because: string): Missing {
  return {
    sheet: 'Orders',
    row: row.row,
    heading: 'Quantity',
    text: `no number of pieces of ${pattern.name} in ${mold.name} is enough: ${because}`,
  };
}

function workOf(
  facts: OrderFacts,
  pieces: PiecesPlan,
  { cups, ovenTime }: { readonly cups: number; readonly ovenTime: number },
  shop: Shop,
): WorkFacts {
  return {
    setUpTime: shop.setUpTime,
    colorTime: shop.colorTime,
    cups,
    pourSeconds: facts.mold.pourSeconds,
    pieces: pieces.toPour,
    layers: facts.pattern.layers.length,
    cookingTime: ovenTime,
    finishTime: shop.finishTime,
  };
}
