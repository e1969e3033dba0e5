import type { Shop } from '../../book/settings/settings.ts';
import { cupTimeInBand } from '../../heat/cupTimeInBand.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import type { LayerFacts } from '../facts/findPattern.ts';
import { courseOf, type FixedRun } from '../heat/fixedRun.ts';
import type { HeatFigures } from '../heat/heatFigures.ts';
import { layerHeat } from '../heat/layerHeat.ts';
import { fillingOf } from '../heat/planRound.ts';
import { plateHeat } from '../heat/plateHeat.ts';
import { type LayerAnswers, layerAnswers } from './layerAnswers.ts';

/** What a plan would say with one set of drawn figures; +infinity for never, and for a cup that never leaves its band. */
export interface DrawnAnswers {
  readonly heatUp: number;
  readonly plateau: number;
  readonly cupTime: number;
  /** Mold top at the wanted moments [degC] */
  readonly tops: readonly number[];
  readonly layers: readonly LayerAnswers[];
}

export interface DrawnRun extends FixedRun {
  readonly figures: HeatFigures;
  /** Those of the plan itself */
  readonly usual: HeatFigures;
  /** Since switch-on, in order [s] */
  readonly moments: readonly number[];
}

/** What is left of the default's range around a set temperature from a shop's own puck trials, as a share. An assumption. */
const OWN_SET_SHARE = 0.3;

/** The answers of the plan's own functions to one set of figures, setting and moments of pouring kept. */
export function drawnAnswers(facts: OrderFacts, shop: Shop, run: DrawnRun): DrawnAnswers {
  const { figures, moments, pouredAt } = run;
  const heat = plateHeat(facts.mold, facts.plate, shop, {
    ...run.plateSet,
    figures,
    moments,
    effort: 'quick',
  });
  const filling = fillingOf(facts);
  const layers = filling.layers.map((layer) => withDrawnSet(layer, run));
  const course = courseOf(run, heat);
  const solved = layerHeat({ ...filling, layers }, { course, figures, pouredAt, effort: 'quick' });
  return {
    heatUp: heat.heatUp ?? Number.POSITIVE_INFINITY,
    plateau: heat.plateau,
    cupTime: Math.min(...run.cups.map((cup) => timeOf(cup, shop, run))),
    tops: heat.samples.map(({ top }) => top),
    layers: layerAnswers(solved.layers),
  };
}

/** A plastisol with a set temperature of its own is not known exactly either. */
function withDrawnSet(layer: LayerFacts, { figures, usual }: DrawnRun): LayerFacts {
  const own = layer.base.record.setTemperature;
  if (own === undefined) return layer;
  const setTemperature = own + OWN_SET_SHARE * (figures.setTemperature - usual.setTemperature);
  return { ...layer, base: { ...layer.base, record: { ...layer.base.record, setTemperature } } };
}

function timeOf(
  { mass, hotVolume, pourTemperature }: FixedRun['cups'][number],
  { roomTemperature }: Shop,
  { figures, lowestPour }: DrawnRun,
): number {
  const { cupCoefficient: coefficient, specificHeat } = figures;
  const cup = { mass, hotVolume, roomTemperature, coefficient, specificHeat };
  const time = cupTimeInBand(cup, pourTemperature, lowestPour);
  return time.kind === 'reached' ? time.seconds : Number.POSITIVE_INFINITY;
}
