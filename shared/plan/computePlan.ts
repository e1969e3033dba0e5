import { minutesOfWork, workTimes } from '../batch/minutesOfWork.ts';
import { type BookIndex, nameKey, remember } from '../book/bookIndex.ts';
import type { Missing } from '../book/missingCells.ts';
import type { Shop } from '../book/settings/settings.ts';
import { planAmounts } from './amounts/planAmounts.ts';
import { planEnergy } from './amounts/planEnergy.ts';
import type { OrderFacts } from './facts/findOrder.ts';
import { planCoolDown } from './heat/planCoolDown.ts';
import { type PlateOutcome, planPlate } from './heat/planPlate.ts';
import { heatKey, planRound } from './heat/planRound.ts';
import type { OrderPlan, PlatePlan } from './planTypes.ts';
import { planWarnings } from './warnings/planWarnings.ts';

/** The figures of a plan whose facts are complete, or what contradicts itself. */
export function computePlan(
  index: BookIndex,
  facts: OrderFacts,
): OrderPlan | { readonly kind: 'missing'; readonly missing: readonly Missing[] } {
  const { shop } = index.book;
  const amounts = planAmounts(index, facts);
  if (amounts.kind === 'missing') return amounts;
  const { pieces, evidence, layers, plastisolVolume, plastisolMass, cups, limits, work } = amounts;
  const { cup, passes, heatUsed, ovenTime } = amounts.cup;
  const outcome = plateOutcome(index, facts);
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
  return {
    kind: 'plan',
    ...identity(facts, shop),
    pieces,
    layers: plans,
    plastisolVolume,
    plastisolMass,
    cups,
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
