import { DAY_TABLES } from '../../book/book.ts';
import { CHECKLIST } from '../../day/checklist/checklistColumns.ts';
import { checklistRows } from '../../day/checklist/checklistRows.ts';
import type { DayPlan } from '../../day/planning/planDay.ts';
import { followedDay } from '../../day/shop/followedDay.ts';
import type { DayQuestion, PourDayFacts } from '../../day/shop/pourDay.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import type { ChecklistWritten } from '../checklistCommands.ts';
import { type Decision, isRefused, writeCommand } from '../command.ts';
import { DAY_FIELDS } from './dayQuestion.ts';
import { plannedDay } from './planDayFor.ts';
import { replanned } from './replanDayFor.ts';

/** Plans as `planDayFor` does, writes the plan to the sheet *Checklist* and follows it from now on. */
export const writeChecklist = writeCommand<'writeChecklist', (typeof DAY_TABLES)[number]>({
  payload: DAY_FIELDS,
  tables: DAY_TABLES,
  decide: (payload, book, context) => {
    const day = plannedDay(payload, book, context);
    if (isRefused(day)) return day;
    const { plan, firstDay, days } = day;
    // By name: an order that is accepted tomorrow does not belong to this plan.
    const orders = [...plan.orders, ...plan.unplanned].map(({ order }) => order);
    return follow({ firstDay, days, orders }, day);
  },
});

/** Replans from the ticks, gives the lines of the checklist their new times and follows the new plan. */
export const updateChecklist = writeCommand<'updateChecklist', (typeof DAY_TABLES)[number]>({
  payload: {},
  tables: DAY_TABLES,
  decide: (_asked, book, context) => {
    const before = context.followedDay();
    const day = replanned(book, context, before);
    if (isRefused(day)) return day;
    if (before === undefined) return refuse('', 'The plan that was followed is gone: plan anew.');
    return follow(before.asked, day);
  },
});

/** Writes a plan's lines and keeps what its ticks will be told from. */
function follow(
  asked: DayQuestion,
  { plan, runs, firstDay, system }: PourDayFacts & { readonly plan: DayPlan },
): Decision<ChecklistWritten> | Refused {
  const facts = new Map(runs.map((run) => [run.order, run]));
  const rows = checklistRows(plan, facts, { firstDay });
  if (rows.length === 0)
    return refuse('', 'No order has a place in these days, so there is nothing to write.');
  return {
    kind: 'decided',
    answer: { kind: 'ok', sheet: CHECKLIST, lines: rows.length },
    writes: [
      { kind: 'checklist', rows, frame: { firstDay, system } },
      { kind: 'followed day', day: followedDay(asked, plan) },
    ],
  };
}
