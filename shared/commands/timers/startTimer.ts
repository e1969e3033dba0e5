import { PLAN_TABLES } from '../../book/book.ts';
import { hasRoom } from '../../day/timers/timersText.ts';
import { refuse } from '../../errors/refuse.ts';
import { decided, isRefused, writeCommand } from '../command.ts';
import { NEEDED_TEXT } from '../readPayload.ts';
import { choicesOf } from './timersFor.ts';

/** More than anybody watches. */
const MOST = 16;

/** A page's clock may be off this much [ms]: windows are counted in seconds on clocks that agree. */
const APART = 120_000;

/** Starts a timer of an order, counted from when the button was pressed. */
export const startTimer = writeCommand<'startTimer', (typeof PLAN_TABLES)[number]>({
  payload: { order: NEEDED_TEXT, key: NEEDED_TEXT, at: NEEDED_TEXT, token: NEEDED_TEXT },
  tables: PLAN_TABLES,
  decide: ({ order, key, at, token }, book, context) => {
    const startedAt = Number(at);
    const off = startedAt - context.instant();
    if (!/^\d{1,15}$/.test(at))
      return refuse('at', `at must be a count of milliseconds, got "${at}"`);
    if (Math.abs(off) > APART)
      return refuse(
        '',
        `The clock of this computer is ${Math.round(Math.abs(off) / 60_000)} min ${off > 0 ? 'ahead' : 'behind'}: set it right, then start the timer again.`,
      );
    const choices = choicesOf(book, order);
    if (isRefused(choices)) return choices;
    const choice = choices.find((one) => one.key === key);
    if (choice === undefined)
      return refuse('key', `order ${order} has no timer "${key}"; open the timers anew`);
    const running = context.timers();
    if (running.some(({ id }) => id === token)) return decided({ kind: 'ok', timers: running });
    const timers = [...running, { ...choice, id: token, order, startedAt }];
    if (timers.length > MOST || !hasRoom(timers))
      return refuse('', `${running.length} timers run already: stop one that is done first.`);
    return decided({ kind: 'ok', timers }, { writes: [{ kind: 'timers', timers }] });
  },
});
