import { pausePoints } from '../../../plan/pausePoints.ts';
import type { OrderPlan } from '../../../plan/planTypes.ts';
import type { SheetSection } from '../runSheetTypes.ts';

/** The pauses of a run sheet. */
export function checklistsSection(plan: OrderPlan): SheetSection {
  return {
    name: 'checklists',
    heading: 'Stop and check',
    blocks: pausePoints(plan).map(({ name, items }) => ({ kind: 'checklist', name, items })),
  };
}
