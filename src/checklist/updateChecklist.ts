import type { ChecklistWritten } from '../../shared/commands/checklistCommands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { keptPlan } from '../day/keptPlan.ts';
import { replanDayFor } from '../day/replanDayFor.ts';
import { followPlan } from './writeChecklist.ts';

/** Page call: replans from the ticks, gives the lines of the checklist their new times and follows the new plan. */
export function updateChecklist(): ChecklistWritten | Refused {
  const answer = replanDayFor();
  if (answer.kind === 'refused') return answer;
  const asked = keptPlan()?.asked;
  if (asked === undefined) return refuse('', 'The plan that was followed is gone: plan anew.');
  return followPlan(asked, answer);
}
