import type { ChecklistWritten } from '../../shared/commands/checklistCommands.ts';
import { CHECKLIST } from '../../shared/day/checklist/checklistColumns.ts';
import { checklistRows } from '../../shared/day/checklist/checklistRows.ts';
import type { DayPlan } from '../../shared/day/planning/planDay.ts';
import type { DayQuestion, PourDayFacts } from '../../shared/day/shop/pourDay.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { keepPlan } from '../day/keptPlan.ts';
import { planDayFor } from '../day/planDayFor.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { writeChecklistTab } from './writeChecklistTab.ts';

/**
 * Page call: plans as `planDayFor` does, writes the plan to the sheet *Checklist* and follows it from now on.
 * @param payload `{ orders?, firstDay?, days? }`
 */
export function writeChecklist(payload: unknown): ChecklistWritten | Refused {
  const answer = planDayFor(payload);
  if (answer.kind === 'refused') return answer;
  const { plan, firstDay, days } = answer;
  // By name: an order that is accepted tomorrow does not belong to this plan.
  const orders = [...plan.orders, ...plan.unplanned].map(({ order }) => order);
  return followPlan({ firstDay, days, orders }, answer);
}

/** Writes a plan's lines and keeps what its ticks will be told from. */
export function followPlan(
  asked: DayQuestion,
  { plan, runs, firstDay, system }: PourDayFacts & { readonly plan: DayPlan },
): ChecklistWritten | Refused {
  const facts = new Map(runs.map((run) => [run.order, run]));
  const rows = checklistRows(plan, facts, { firstDay });
  if (rows.length === 0)
    return refuse('', 'No order has a place in these days, so there is nothing to write.');
  return withDocumentLock(() => {
    const refused = writeChecklistTab(rows, { firstDay, system });
    if (refused !== undefined) return refused;
    keepPlan({ asked, plan });
    return { kind: 'ok', sheet: CHECKLIST, lines: rows.length };
  });
}
