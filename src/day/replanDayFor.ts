import { DAY_TABLES } from '../../shared/book/book.ts';
import type { ReplanAnswer } from '../../shared/commands/dayCommands.ts';
import { ticksOf } from '../../shared/day/checklist/ticksOf.ts';
import { replannedDay } from '../../shared/day/shop/replannedDay.ts';
import { describe } from '../../shared/errors/describe.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { readChecklist } from '../checklist/readChecklist.ts';
import { wallClock } from '../checklist/wallClock.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { workbook } from '../platform/workbook.ts';
import { keptPlan } from './keptPlan.ts';

/** Page call: the rest of the plan that is followed, from the ticks of the checklist up to now. Nothing is written. */
export function replanDayFor(): ReplanAnswer | Refused {
  const kept = keptPlan();
  if (kept === undefined)
    return refuse('', 'No plan is followed yet: write the checklist of a plan first.');
  const { asked, plan: followed } = kept;
  const rows = readChecklist(asked.firstDay);
  if ('kind' in rows) return rows;
  const zone = workbook().getSpreadsheetTimeZone();
  const now = Math.floor(wallClock(asked.firstDay, zone).toSeconds(new Date(), 0) ?? 0);
  const { ticks, untimed, ahead } = ticksOf(rows, followed, now);
  try {
    const replanned = replannedDay(readBookNow(DAY_TABLES), asked, { followed, ticks, now });
    return { kind: 'ok', ...replanned, untimed, ahead };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return refuse('', describe(error));
  }
}
