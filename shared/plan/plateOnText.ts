import { formatClock } from '../book/reading/parseClock.ts';
import { durationText } from '../words/quantityText.ts';
import type { OrderPlan, PlatePlan } from './planTypes.ts';

/** When to switch on: a clock time, or how long before the first pour. */
export function plateOnText(plan: Pick<OrderPlan, 'system'>, plate: PlatePlan): string {
  if (plate.onAt !== undefined) return formatClock(plate.onAt, plan.system);
  return `${durationText(Math.ceil((plate.heatUp + plate.readyWait) / 60) * 60)} before the first pour`;
}
