import { CHANGE_OF_CUP, type PourPass, pourPass } from '../../batch/pourPass.ts';
import type { Shop } from '../../book/settings/settings.ts';
import { CUP_SHARE, cavitiesPerHeating, cupTimeInBand } from '../../heat/cupTimeInBand.ts';
import { heatUsed } from '../../heat/heatUsed.ts';
import { type MicrowavePlan, microwaveTime } from '../../heat/microwaveTime.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { PlannedLayer } from '../amounts/planLayers.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import type { OrderPlan, PiecesPlan } from '../planTypes.ts';

/** One microwave burst and the rest after it, for stirring and reading [s]. Common practice, no source. */
const BURST = 30;
const REST = 20;

/** A cup is held this long at its top temperature while it is stirred through and read [s]. Common practice, no source. */
const STIR_THROUGH = 60;

export type CupPlan = Pick<
  OrderPlan,
  'cupTime' | 'cavitiesPerCup' | 'cookTime' | 'cookBursts' | 'heatings' | 'heatUsed' | 'layerTime'
>;

export interface PlannedCup {
  readonly cup: CupPlan;
  /** One per layer: how it goes through the cavities of a round */
  readonly passes: readonly PourPass[];
  /** One per layer: heat behind a leftover of it, earlier melts included, as seconds at 170 °C [s] */
  readonly heatUsed: readonly number[];
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
  const poured = Math.min(pieces.perRound, pieces.toPour);
  const cups = layers.map((layer, index) => {
    const before = facts.pattern.layers[index]?.base.record.heatAlreadyUsed ?? 0;
    const cup = oneCup(facts, pieces, layer, shop);
    return { ...cup, used: before + cup.used };
  });
  const least = (pick: (cup: (typeof cups)[number]) => number) => Math.min(...cups.map(pick));
  const most = (pick: (cup: (typeof cups)[number]) => number) => Math.max(...cups.map(pick));
  const cup: CupPlan = {
    cupTime: least((cup) => cup.time),
    cavitiesPerCup: least((cup) => cup.cavities),
    cookTime: most((cup) => cup.cook.heating),
    cookBursts: most((cup) => cup.cook.bursts),
    heatings: most((cup) => cup.heatings),
    heatUsed: most((cup) => cup.used) / shop.heatBudget,
    layerTime: poured * facts.mold.pourSeconds,
  };
  const passes = cups.map(({ cavities, stop }) =>
    pourPass({
      cavities: poured,
      pourSeconds: facts.mold.pourSeconds,
      cavitiesPerHeating: Math.max(1, cavities),
      stop,
    }),
  );
  return {
    cup,
    passes,
    heatUsed: cups.map(({ used }) => used),
    ovenTime: cups.reduce((sum, { ovenTime }) => sum + ovenTime, 0),
  };
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
  const heat = (start: number, end: number): MicrowavePlan =>
    microwaveTime({
      bodies: [plastisol, wall],
      start,
      end,
      ratedPower: shop.microwavePower,
      efficiency: shop.microwaveEfficiency,
      burst: BURST,
      rest: REST,
    });
  const cook = heat(roomTemperature, cookTemperature);
  const used = heatUsed([
    { from: cookTemperature, to: cookTemperature, seconds: STIR_THROUGH },
    { from: pourTemperature, to: pourTemperature, seconds: STIR_THROUGH * (heatings - 1) },
    { from: pourTemperature, to: lowestPour, seconds: time * heatings },
  ]);
  // A cup cold from waiting takes a whole cook; one that only left its band takes that share of one.
  const touchUp = (pourTemperature - lowestPour) / (cookTemperature - roomTemperature);
  const ovenTime = cook.heating * plan.cups * (cooks + (heatings - cooks) * touchUp);
  // With more cups of the layer than one the next is hot by then.
  const stop = plan.cups > 1 ? CHANGE_OF_CUP : heat(lowestPour, pourTemperature).elapsed + REST;
  return { time, cavities, heatings, used, cook, ovenTime, stop };
}
