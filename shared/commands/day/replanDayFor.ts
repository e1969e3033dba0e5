import { DAY_TABLES, type DayBook } from '../../book/book.ts';
import { ticksOf } from '../../day/checklist/ticksOf.ts';
import type { FollowedDay } from '../../day/shop/followedDay.ts';
import { replannedDay } from '../../day/shop/replannedDay.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import { type Context, isRefused, readCommand } from '../command.ts';
import type { ReplanAnswer } from '../dayCommands.ts';
import { orRefused } from './orRefused.ts';

/** The rest of the plan that is followed, from the ticks of the checklist up to now. */
export const replanDayFor = readCommand<'replanDayFor', (typeof DAY_TABLES)[number]>({
  payload: {},
  tables: DAY_TABLES,
  answer: (_asked, book, context) => replanned(book, context, context.followedDay()),
});

export function replanned(
  book: DayBook,
  context: Context,
  day: FollowedDay | undefined,
): ReplanAnswer | Refused {
  if (day === undefined)
    return refuse('', 'No plan is followed yet: write the checklist of a plan first.');
  const { asked, plan: followed } = day;
  const rows = context.checklist(asked.firstDay);
  if (isRefused(rows)) return rows;
  const now = Math.floor(context.secondsSince(asked.firstDay));
  const { ticks, untimed, ahead } = ticksOf(rows, followed, now);
  return orRefused(() => {
    const rest = replannedDay(book, asked, { followed, ticks, now });
    return { kind: 'ok', ...rest, untimed, ahead };
  });
}
