import { decided, writeCommand } from '../command.ts';
import { NEEDED_TEXT } from '../readPayload.ts';

/** Stops a timer; one that is gone already is no mistake. */
export const stopTimer = writeCommand<'stopTimer'>({
  payload: { id: NEEDED_TEXT },
  tables: [],
  decide: (asked, _book, context) => {
    const timers = context.timers().filter(({ id }) => id !== asked.id);
    return decided({ kind: 'ok', timers }, { writes: [{ kind: 'timers', timers }] });
  },
});
