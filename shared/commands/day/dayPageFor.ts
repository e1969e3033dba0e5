import { DAY_TABLES } from '../../book/book.ts';
import { decided, isRefused, readCommand, showCommand } from '../command.ts';
import { OPTIONAL_TEXT } from '../readPayload.ts';
import { DAY_FIELDS } from './dayQuestion.ts';
import { plannedDay } from './planDayFor.ts';
import { replanned } from './replanDayFor.ts';

const PAYLOAD = { ...DAY_FIELDS, from: OPTIONAL_TEXT } as const;

/** The pour day as its page draws it. */
export const dayPageFor = readCommand<'dayPageFor', (typeof DAY_TABLES)[number]>({
  payload: PAYLOAD,
  tables: DAY_TABLES,
  answer: ({ from, ...asked }, book, context) => {
    const day =
      from === 'ticks'
        ? replanned(book, context, context.followedDay())
        : plannedDay(asked, book, context);
    return isRefused(day) ? day : { kind: 'ok', shopName: book.shop.shopName, day };
  },
});

/** Opens the dialog that shows and prints a pour day; it asks for the plan itself. */
export const showDay = showCommand<'showDay'>({
  payload: PAYLOAD,
  tables: [],
  decide: (request) =>
    decided({ kind: 'ok' }, { shows: { dialog: 'PourDay', title: 'Pour day', request } }),
});
