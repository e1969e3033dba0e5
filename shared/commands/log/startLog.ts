import { type Book, PLAN_TABLES } from '../../book/book.ts';
import { goodSoFar } from '../../log/goodSoFar.ts';
import { orderToLog } from '../../log/orderToLog.ts';
import { correctable, entryOf, rowToCorrect } from '../../log/rowToCorrect.ts';
import { runChoices } from '../../log/runChoices.ts';
import { typedOutcome } from '../../log/typedOutcome.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { isRefused, readCommand } from '../command.ts';
import type { LogForm } from '../logCommands.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT } from '../readPayload.ts';

/** What the log form of an order needs, and a token that makes its entry one of a kind. */
export const startLog = readCommand<'startLog', (typeof PLAN_TABLES)[number]>({
  payload: { order: NEEDED_TEXT, firstPour: OPTIONAL_TEXT, corrects: OPTIONAL_TEXT },
  tables: PLAN_TABLES,
  answer: (asked, book, context) => {
    const old = asked.corrects ? rowToCorrect(book, asked.corrects, asked.order) : undefined;
    if (old && isRefused(old)) return old;
    const found = orderToLog(book, asked.order, old?.record);
    if (isRefused(found)) return found;
    const { order, mold, pattern, version, layers, quantity } = found;
    return {
      kind: 'ok',
      order,
      mold,
      pattern,
      version,
      layers,
      quantity,
      good: goodSoFar(book, order),
      system: book.shop.units,
      runs: runChoices(book, order, context.runSheetTexts()),
      entries: correctable(book, order),
      ...(old ? { correction: correctionOf(old, book.shop.units) } : {}),
      token: context.freshToken(),
    };
  },
});

function correctionOf(
  old: Book['pourLog'][number],
  system: UnitSystem,
): NonNullable<LogForm['correction']> {
  return { entry: entryOf(old), values: typedOutcome(old.record, system) };
}
