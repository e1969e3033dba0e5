import type { Shop } from '../../book/settings/settings.ts';
import type { MoldReading } from '../../heat/solver/moldCourse.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { cookRise } from '../amounts/planLayers.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import type { OrderPlan } from '../planTypes.ts';
import { type PlateHeat, topTargetOf } from './plateHeat.ts';
import type { PlateSet } from './plateSetup.ts';

/** What a plan has settled, whatever the figures that nobody knows exactly turn out to be. */
export interface FixedRun {
  readonly plateSet: Omit<PlateSet, 'figures'>;
  /** What the mold top reads at the first pour [degC]; absent where the plate does not bring it there */
  readonly target?: number;
  /** When each layer lands in the cavity that waits longest, from its first pour [s] */
  readonly pouredAt: readonly number[];
  readonly lowestPour: number;
  /** One per layer [kg], [m3], [degC] */
  readonly cups: readonly {
    readonly mass: number;
    readonly hotVolume: number;
    readonly pourTemperature: number;
  }[];
}

/** Setting, moments of pouring and cups of a plan. */
export function fixedRun(facts: OrderFacts, plan: OrderPlan, shop: Shop): FixedRun {
  const swelling = 1 + DEFAULTS.expansion.value * cookRise(shop);
  const reachable = plan.plate.kind === 'reachable';
  let at = 0;
  return {
    plateSet: {
      setting: plan.plate.kind === 'reachable' ? plan.plate.setting : facts.plate.highestSetting,
      count: facts.moldsInUse,
    },
    ...(reachable && { target: topTargetOf(shop) }),
    pouredAt: plan.layers.map(({ run }) => {
      at += run.wait?.longest ?? 0;
      return at;
    }),
    lowestPour: plan.lowestPour,
    cups: plan.layers.map(({ cupMass, cupVolume, pourTemperature }) => ({
      mass: cupMass,
      hotVolume: cupVolume * swelling,
      pourTemperature,
    })),
  };
}

/**
 * The mold from the first pour on. It is read before it is poured: where a run waits for its target it starts there, and on a
 * plate that turns out too weak, someone has turned up the dial.
 */
export function courseOf({ target }: FixedRun, heat: PlateHeat): readonly MoldReading[] {
  return target !== undefined && heat.heatUp === undefined
    ? [{ time: 0, temperature: target }]
    : heat.climb;
}
