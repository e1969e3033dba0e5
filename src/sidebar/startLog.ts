import type { Book } from '../../shared/book/book.ts';
import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { LogForm, LogPayload } from '../../shared/commands/logCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { correctable, entryOf, rowToCorrect } from '../../shared/log/correction.ts';
import { goodSoFar } from '../../shared/log/goodSoFar.ts';
import { orderToLog } from '../../shared/log/orderToLog.ts';
import { runChoices } from '../../shared/log/runIds.ts';
import { typedOutcome } from '../../shared/log/typedOutcome.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { runOnSheet } from '../log/runOnSheet.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT, readPayload } from './readPayload.ts';

/**
 * Page call: what the log form of an order needs, and a token that makes its entry one of a kind.
 * @param payload `{ order, corrects }`; corrects is the entry of a row to fill the form from
 */
export function startLog(payload: unknown): LogForm | Refused {
  const read = readPayload<LogPayload>(FIELDS, payload);
  if (read.kind === 'refused') return read;
  const book = readBookNow(PLAN_TABLES);
  const { corrects } = read.value;
  const old = corrects ? rowToCorrect(book, corrects, read.value.order) : undefined;
  if (old?.kind === 'refused') return old;
  const found = orderToLog(book, read.value.order, old?.record);
  if (found.kind === 'refused') return found;
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
    runs: runChoices(book, order, runOnSheet()),
    entries: correctable(book, order),
    ...(old ? { correction: correctionOf(old, book.shop.units) } : {}),
    token: Utilities.getUuid(),
  };
}

const FIELDS = { order: NEEDED_TEXT, firstPour: OPTIONAL_TEXT, corrects: OPTIONAL_TEXT } as const;

function correctionOf(
  old: Book['pourLog'][number],
  system: UnitSystem,
): NonNullable<LogForm['correction']> {
  return { entry: entryOf(old), values: typedOutcome(old.record, system) };
}
