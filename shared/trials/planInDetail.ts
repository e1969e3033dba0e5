import type { BookIndex, OrderRow } from '../book/bookIndex.ts';
import { nameKey } from '../book/bookIndex.ts';
import { findOrder } from '../plan/facts/findOrder.ts';
import { planRow } from '../plan/planOrder.ts';
import type { OrderPlan, PlanResult } from '../plan/planTypes.ts';
import type { HeatDetail } from '../plan/uncertainty/heatDetail.ts';
import { planDetail } from '../plan/uncertainty/planDetail.ts';
import { gatherHeat } from './contact/gatherHeat.ts';
import type { HeatTrialRow } from './trialBook.ts';

/** Only a trial heated as the plan heats stands beside its curve; a dial is read to about this [K]. */
const SAME_SETTING = 3;

/**
 * The plan of an order row with the bands of its times and temperatures, the curves behind them, and what heat trials read
 * of that mold on that plate at that setting.
 * @param seed - whole; the same seed gives the same bands
 */
export function planInDetail(
  index: BookIndex,
  row: OrderRow,
  heatTrials: readonly HeatTrialRow[],
  seed: number,
): PlanResult {
  const plan = planRow(index, row);
  const found = findOrder(index, row);
  if (plan.kind === 'missing' || found.kind === 'missing') return plan;
  const readings = readingsOf(index, plan, { heatTrials, lid: found.facts.plate.lid });
  return { ...plan, detail: planDetail(index, found.facts, plan, { seed, readings }) };
}

function readingsOf(
  index: BookIndex,
  plan: OrderPlan,
  { heatTrials, lid }: { readonly heatTrials: readonly HeatTrialRow[]; readonly lid: string },
): HeatDetail['readings'] {
  const { plate, mold, moldsInUse, system } = plan;
  if (plate.kind === 'unreachable') return [];
  // Rows that contradict each other are named where trials are shown, not beside a plan.
  const gaps = { index, system, missing: [] };
  const book = { index, heatTrials, benchTrials: [], measuredFigures: [] };
  const heatings = gatherHeat(book, gaps).get(nameKey(plate.plate)) ?? [];
  return heatings
    .filter(
      (one) =>
        nameKey(one.mold) === nameKey(mold) &&
        one.start === 'cold' &&
        one.lid === lid &&
        one.moldsOnPlate === moldsInUse &&
        Math.abs(one.setting - plate.setting) <= SAME_SETTING,
    )
    .flatMap(({ trial, readings }) =>
      readings.map(({ seconds, top }) => ({ trial, seconds, top })),
    );
}
