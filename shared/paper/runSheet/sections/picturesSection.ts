import { heatUpOf } from '../../../pictures/heatUp/heatUp.ts';
import { layerTimelineOf } from '../../../pictures/layerTimeline/layerTimeline.ts';
import type { OrderPlan } from '../../../plan/planTypes.ts';
import type { RunIdentity, SheetBlock, SheetSection } from '../runSheetTypes.ts';

/** Heat-up and one round as pictures, for a page of their own. */
export function picturesSection(plan: OrderPlan, run: RunIdentity): SheetSection {
  const pictures = [heatUpOf(plan), layerTimelineOf(plan)].filter((one) => one !== undefined);
  return {
    name: 'pictures',
    heading: `Run ${run.runId} in pictures`,
    blocks: pictures.map((picture): SheetBlock => ({ kind: 'picture', picture })),
  };
}
