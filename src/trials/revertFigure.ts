import { TRIAL_TABLES } from '../../shared/book/book.ts';
import { TABLES } from '../../shared/book/tables.ts';
import type { FigureChanged } from '../../shared/commands/commands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { type FigureCell, figureCell, isSame } from '../../shared/trials/figureCells.ts';
import { figureText } from '../../shared/trials/figureText.ts';
import { noMissingCells } from '../../shared/trials/findTrials.ts';
import { adoptionKey, type CellChange, readJournal } from '../../shared/trials/journal.ts';
import type { TrialBook } from '../../shared/trials/trialBook.ts';
import { trialBook } from '../../shared/trials/trialBook.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { type FigureAsked, readWayBackPayload } from './figurePayload.ts';
import { readTrials } from './readTrials.ts';
import { type FigureWrite, writeFigures } from './writeFigures.ts';

/**
 * Page call: writes back what stood in the cells before the last measured figure was put in use. A cell that was changed
 * by hand since keeps what it holds; an entry that was taken back already is left at that.
 * @param payload `{ figure, of?, entry, who? }`
 */
export function revertFigure(payload: unknown): FigureChanged | Refused {
  const asked = readWayBackPayload(payload);
  if (asked.kind === 'refused') return asked;
  const changed = withDocumentLock(() => revert(asked));
  return typeof changed === 'string' ? { ...readTrials(), changed } : changed;
}

function revert({ figure, of, who, entry }: FigureAsked): FigureChanged['changed'] | Refused {
  const book = trialBook(readBookNow(TRIAL_TABLES));
  const stack = readJournal(book, noMissingCells(book)).get(adoptionKey(figure, of)) ?? [];
  const last = stack[stack.length - 1];
  if (last === undefined || !stack.some((one) => one.entry === entry)) return 'before';
  if (last.entry !== entry)
    return refuse(
      '',
      `A newer figure was put in use since, as entry ${last.entry} of Measured figures: take that back first.`,
    );
  const writes: FigureWrite[] = [];
  for (const change of last.changes) {
    const cell = figureCell(book, change.name, of);
    if (cell === undefined) return refuse('', `${of} is not in the book any more.`);
    if (!isSame(cell.value, change.after)) return changedByHand(book, cell, change);
    writes.push({ cell, after: change.before });
  }
  const { trials } = last;
  return writeFigures(book, writes, { change: 'taken back', of: last.of, trials, who }) ?? 'now';
}

function changedByHand(book: TrialBook, cell: FigureCell, { after }: CellChange): Refused {
  const { home, row, name } = cell;
  const words = (value: number | undefined) =>
    value === undefined ? 'nothing' : figureText(name, value, book.index.book.shop.units);
  const place = home.sheet === 'shop' ? 'In Shop' : `In ${TABLES[home.sheet].sheet}, row ${row}`;
  return refuse(
    '',
    `${place}, ${name} holds ${words(cell.value)} and not the ${words(after)} that was put in use: it was changed by hand and stays as it is.`,
  );
}
