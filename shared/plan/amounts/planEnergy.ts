import type { Shop } from '../../book/settings/settings.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { PlateOutcome } from '../heat/planPlate.ts';
import { topTargetOf } from '../heat/plateHeat.ts';
import type { LayerPlan } from '../planTypes.ts';
import type { RunEnergy } from './runEnergy.ts';

interface EnergyFacts {
  readonly outcome: PlateOutcome;
  readonly layers: readonly LayerPlan[];
  readonly rounds: number;
  /** Microwave running time of all heatings [s] */
  readonly ovenTime: number;
}

/**
 * Electricity of a run.
 *
 * plate = heat-up + holding power x (wait + rounds x time of a round) + (rounds - 1) x heat-up x share of the rise;
 * share = (target - demold temperature) / (target - room): the plate is switched off at a round's last pour, and plate and
 * mold are as cool as the pieces come out when they are heated again. Oven = running time x rated output / 0.6.
 * Heat that the plastic brings into the mold is left out.
 *
 * @returns [J]
 */
export function planEnergy(facts: EnergyFacts, shop: Shop): RunEnergy {
  const { outcome, layers, rounds, ovenTime } = facts;
  const oven = (ovenTime * shop.microwavePower) / DEFAULTS.microwaveInput.value;
  if (outcome.energy === undefined) return { oven };
  const { heatUp, holding } = outcome.energy;
  const target = topTargetOf(shop);
  const share = (target - shop.demoldTemperature) / (target - shop.roomTemperature);
  const again = (rounds - 1) * heatUp * Math.max(0, share);
  const roundTime = Math.max(0, ...layers.map(({ run }) => run.firstAt + run.passTime));
  return { plate: heatUp + holding * (shop.readyWait + rounds * roundTime) + again, oven };
}
