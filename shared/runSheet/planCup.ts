import type { Shop } from '../book/settings.ts';
import { CUP_SHARE, cavitiesPerHeating, cupTimeInBand } from '../heat/cupTimeInBand.ts';
import { heatUsed } from '../heat/heatUsed.ts';
import { microwaveTime } from '../heat/microwaveTime.ts';
import { DEFAULTS } from '../material/defaults.ts';
import type { OrderFacts } from './findOrder.ts';
import type { OrderPlan, PiecesPlan } from './plan.ts';
import type { PlannedLayer } from './planLayers.ts';

/** One microwave burst and the rest after it, for stirring and reading [s]. Common practice, no source. */
const BURST = 30;
const REST = 20;

/** A cup is held this long at its top temperature while it is stirred through and read [s]. Common practice, no source. */
const STIR_THROUGH = 60;

export type CupPlan = Pick<
  OrderPlan,
  'cupTime' | 'cavitiesPerCup' | 'cookTime' | 'heatings' | 'heatUsed' | 'layerTime'
>;

export interface PlannedCup {
  readonly cup: CupPlan;
  /** Microwave running time of all heatings of all cups [s]. */
  readonly ovenTime: number;
}

/**
 * How one cup fares in the run; where layers differ, the cup that is worst off stands for all.
 * @param shop - with the cook temperature that the materials bear
 */
export function planCup(
  facts: OrderFacts,
  pieces: PiecesPlan,
  layers: readonly PlannedLayer[],
  shop: Shop,
): PlannedCup {
  const cups = layers.map((layer) => oneCup(facts, pieces, layer, shop));
  const least = (pick: (cup: (typeof cups)[number]) => number) => Math.min(...cups.map(pick));
  const most = (pick: (cup: (typeof cups)[number]) => number) => Math.max(...cups.map(pick));
  const poured = Math.min(pieces.perRound, pieces.toPour);
  const cup: CupPlan = {
    cupTime: least((cup) => cup.time),
    cavitiesPerCup: least((cup) => cup.cavities),
    cookTime: most((cup) => cup.cookTime),
    heatings: most((cup) => cup.heatings),
    heatUsed: most((cup) => cup.used) / shop.heatBudget,
    layerTime: poured * facts.mold.pourSeconds,
  };
  return { cup, ovenTime: cups.reduce((sum, { ovenTime }) => sum + ovenTime, 0) };
}

function oneCup(facts: OrderFacts, pieces: PiecesPlan, { plan, batch }: PlannedLayer, shop: Shop) {
  const { roomTemperature, lowestPour, cookTemperature } = shop;
  const { pourTemperature, cupMass } = plan;
  const cup = { mass: cupMass, roomTemperature, hotVolume: batch.cupHotVolume };
  const inBand = cupTimeInBand(cup, pourTemperature, lowestPour);
  const time = inBand.kind === 'reached' ? inBand.seconds : Number.POSITIVE_INFINITY;
  const served = Math.ceil(pieces.toPour / plan.cups);
  const cavities = Math.min(served, cavitiesPerHeating(time, facts.mold.pourSeconds));
  // Between rounds the mold cools and heats again, so a cup that serves several rounds is heated for each.
  const cooks = Math.ceil(pieces.rounds / plan.cups);
  const heatings = Math.max(Math.ceil(served / Math.max(1, cavities)), cooks);
  const plastisol = { mass: cupMass, specificHeat: DEFAULTS.specificHeat.value };
  const wall = { mass: cupMass * CUP_SHARE, specificHeat: DEFAULTS.specificHeat.value };
  const cook = microwaveTime({
    bodies: [plastisol, wall],
    start: roomTemperature,
    end: cookTemperature,
    ratedPower: shop.microwavePower,
    efficiency: shop.microwaveEfficiency,
    burst: BURST,
    rest: REST,
  });
  const used = heatUsed([
    { from: cookTemperature, to: cookTemperature, seconds: STIR_THROUGH },
    { from: pourTemperature, to: pourTemperature, seconds: STIR_THROUGH * (heatings - 1) },
    { from: pourTemperature, to: lowestPour, seconds: time * heatings },
  ]);
  // A cup cold from waiting takes a whole cook; one that only left its band takes that share of one.
  const touchUp = (pourTemperature - lowestPour) / (cookTemperature - roomTemperature);
  const ovenTime = cook.heating * plan.cups * (cooks + (heatings - cooks) * touchUp);
  return { time, cavities, heatings, used, cookTime: cook.heating, ovenTime };
}
