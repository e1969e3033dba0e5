import type { Shop } from '../book/settings.ts';
import { minutesOfWork, type WorkFacts, workTimes } from '../day/minutesOfWork.ts';
import { type BookIndex, nameKey, remember } from './bookIndex.ts';
import type { OrderFacts } from './findOrder.ts';
import { cookLimit, hardStop } from './materialLimits.ts';
import type { Missing, OrderPlan, PiecesPlan, PlatePlan } from './plan.ts';
import { planCoolDown } from './planCoolDown.ts';
import { planCup } from './planCup.ts';
import { planEnergy } from './planEnergy.ts';
import { planLayers } from './planLayers.ts';
import { planPieces } from './planPieces.ts';
import { type PlateOutcome, planPlate } from './planPlate.ts';
import { heatKey, planRound } from './planRound.ts';
import { planWarnings } from './planWarnings.ts';
import { shopGaps } from './shopGaps.ts';

/** The figures of a plan whose facts are complete, or what contradicts itself. */
export function computePlan(
  index: BookIndex,
  facts: OrderFacts,
): OrderPlan | { readonly kind: 'missing'; readonly missing: readonly Missing[] } {
  const { shop } = index.book;
  const gaps = shopGaps(facts, shop);
  if (gaps.length > 0) return { kind: 'missing', missing: gaps };
  const planned = planPieces(index, facts);
  if (planned.kind === 'unreachable')
    return { kind: 'missing', missing: [noPieces(facts, planned.because)] };
  const { pieces, evidence } = planned;
  const outcome = plateOutcome(index, facts);
  const layers = planLayers(facts, pieces, shop);
  const limits = remember(
    index,
    nameKey('limits', facts.pattern.name, facts.pattern.version),
    () => ({
      cookTemperature: cookLimit(facts, shop),
      hardStop: hardStop(facts, shop),
    }),
  );
  const { cup, passes, heatUsed, ovenTime } = planCup(facts, pieces, layers, {
    ...shop,
    cookTemperature: limits.cookTemperature,
  });
  const { times, remedies } = planRound(index, facts, {
    outcome,
    passes,
    hottestCup: limits.cookTemperature,
  });
  const plans = layers.flatMap(({ plan }, place) => {
    const own = times[place];
    return own ? [{ ...plan, ...own, heatUsed: heatUsed[place] ?? 0 }] : [];
  });
  const plate = withClock(outcome, facts, shop);
  const totals = {
    plastisolVolume: layers.reduce((sum, { batch }) => sum + batch.totalVolume, 0),
    plastisolMass: layers.reduce((sum, { batch }) => sum + batch.totalMass, 0),
    cups: plans.reduce((sum, { cups }) => sum + cups, 0),
  };
  const work = workOf(facts, pieces, { cups: totals.cups, ovenTime }, shop);
  return {
    kind: 'plan',
    ...identity(facts, shop),
    pieces,
    layers: plans,
    ...totals,
    plate,
    ...cup,
    ...limits,
    lowestPour: shop.lowestPour,
    heatBudget: shop.heatBudget,
    demoldTemperature: shop.demoldTemperature,
    coolTime: remember(index, nameKey(heatKey('cool', facts), facts.moldsInUse), () =>
      planCoolDown(facts, shop, outcome.kind === 'reachable' ? outcome.plateau : outcome.top),
    ),
    minutesOfWork: minutesOfWork(work),
    work: workTimes(work),
    energy: planEnergy({ outcome, layers: plans, rounds: pieces.rounds, ovenTime }, shop),
    warnings: planWarnings(index, facts, {
      pieces,
      evidence,
      layers: plans,
      plate,
      cup: { ...cup, ...limits },
      remedies,
      top: outcome.top,
    }),
  };
}

function identity(facts: OrderFacts, shop: Shop) {
  const { due, pourOn, firstPour, customer = '', notes = '' } = facts.row.record;
  return {
    order: facts.order,
    row: facts.row.row,
    system: shop.units,
    shopName: shop.shopName,
    customer,
    mold: facts.mold.name,
    moldKind: facts.mold.kind,
    moldsInUse: facts.moldsInUse,
    pattern: facts.pattern.name,
    version: facts.pattern.version,
    quantity: facts.quantity,
    notes,
    ...(due === undefined ? {} : { due }),
    ...(pourOn === undefined ? {} : { pourOn }),
    ...(firstPour === undefined ? {} : { firstPour }),
  };
}

/** What the plate does to the molds of an order; orders alike share one. */
export function plateOutcome(
  index: BookIndex,
  facts: Pick<OrderFacts, 'mold' | 'plate' | 'moldsInUse'>,
): PlateOutcome {
  const { mold, plate, moldsInUse } = facts;
  const key = nameKey('plate', mold.name, plate.name, moldsInUse);
  return remember(index, key, () => planPlate(mold, plate, index.book.shop, moldsInUse));
}

function withClock(outcome: PlateOutcome, facts: OrderFacts, shop: Shop): OrderPlan['plate'] {
  if (outcome.kind === 'unreachable') return { kind: 'unreachable', because: outcome.because };
  const { top: _top, climb: _climb, samples: _samples, energy: _energy, ...plate } = outcome;
  const waiting: PlatePlan = { ...plate, readyWait: shop.readyWait };
  const { firstPour } = facts.row.record;
  if (firstPour === undefined) return waiting;
  const readyAt = firstPour - shop.readyWait / 60;
  return { ...waiting, readyAt, onAt: readyAt - plate.heatUp / 60 };
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
