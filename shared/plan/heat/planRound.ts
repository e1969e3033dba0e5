import type { PourPass } from '../../batch/pourPass.ts';
import { type BookIndex, nameKey, remember } from '../../book/bookIndex.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import { usualFigures } from './heatFigures.ts';
import type { Filling } from './layerHeat.ts';
import type { PlateOutcome } from './planPlate.ts';
import { type LayerTimes, planTimes, type TimedRound } from './planTimes.ts';
import { isInTime, type WindowRemedy, windowRemedies } from './windowRemedies.ts';

export interface PlannedRound {
  /** One per layer */
  readonly times: readonly LayerTimes[];
  /** What would mend it, where a layer is late */
  readonly remedies: readonly WindowRemedy[];
}

export interface RoundConditions {
  readonly outcome: PlateOutcome;
  readonly passes: readonly PourPass[];
  /** What a cup may be poured at [degC] */
  readonly hottestCup: number;
}

/** The heat of a mold, pattern version and plate does not depend on the order. */
export function heatKey(what: string, { mold, pattern, plate }: OrderFacts): string {
  return nameKey(what, mold.name, pattern.name, pattern.version, plate.name);
}

/** What is poured into what. */
export function fillingOf({ mold, pattern, fills }: OrderFacts): Filling {
  return { mold, layers: pattern.layers, fills };
}

/** Times of every layer of a round, and what would mend it where one comes too late; rounds alike are worked out once. */
export function planRound(
  index: BookIndex,
  facts: OrderFacts,
  { outcome, passes, hottestCup }: RoundConditions,
): PlannedRound {
  const { shop } = index.book;
  const key = nameKey(heatKey('round', facts), facts.moldsInUse, JSON.stringify(passes));
  return remember(index, key, () => {
    const filling = fillingOf(facts);
    const round: TimedRound = {
      course: outcome.climb,
      figures: usualFigures(facts.plate, shop),
      passes,
      effort: 'exact',
    };
    const times = planTimes(filling, round, shop.units);
    if (times.every(isInTime)) return { times, remedies: [] };
    const warmerMold = hottestTop(facts, shop.roomTemperature, outcome) - outcome.top;
    return { times, remedies: windowRemedies(filling, round, { warmerMold, hottestCup }) };
  });
}

/** Where the top would settle at the plate's highest setting: its rise goes with the plate's [degC]. */
function hottestTop({ plate }: OrderFacts, room: number, outcome: PlateOutcome): number {
  if (outcome.kind === 'unreachable') return outcome.top;
  const share = (outcome.plateau - room) / (outcome.setting - room);
  return room + share * (plate.highestSetting - room);
}
