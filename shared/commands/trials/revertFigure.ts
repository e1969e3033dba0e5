import { TRIAL_TABLES } from '../../book/book.ts';
import { TABLES } from '../../book/tables.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import { type FigureCell, figureCell, isSame } from '../../trials/figureCell.ts';
import { figureText } from '../../trials/figureText.ts';
import { findTrials, noMissingCells } from '../../trials/findTrials.ts';
import { adoptionKey, type CellChange, readJournal } from '../../trials/readJournal.ts';
import { type TrialBook, trialBook } from '../../trials/trialBook.ts';
import { decided, isRefused, writeCommand } from '../command.ts';
import { NEEDED_TEXT } from '../readPayload.ts';
import { FIGURE_FIELDS, figureAsked } from './figureAsked.ts';
import { type FigureWrite, figureWrites } from './figureWrites.ts';

/**
 * Writes back what stood in the cells before the last measured figure was put in use. A cell that was changed by hand since
 * keeps what it holds; an entry that was taken back already is left at that.
 */
export const revertFigure = writeCommand<'revertFigure', (typeof TRIAL_TABLES)[number]>({
  payload: { ...FIGURE_FIELDS, entry: NEEDED_TEXT },
  tables: TRIAL_TABLES,
  decide: (payload, records, context) => {
    const asked = figureAsked(payload);
    if (isRefused(asked)) return asked;
    const { figure, of, who } = asked;
    const { entry } = payload;
    const book = trialBook(records);
    const stack = readJournal(book, noMissingCells(book)).get(adoptionKey(figure, of)) ?? [];
    const last = stack[stack.length - 1];
    if (last === undefined || !stack.some((one) => one.entry === entry))
      return decided({ kind: 'ok', ...findTrials(book), changed: 'before' });
    if (last.entry !== entry)
      return refuse(
        '',
        `A newer figure was put in use since, as entry ${last.entry} of Measured figures: take that back first.`,
      );
    const figures: FigureWrite[] = [];
    for (const change of last.changes) {
      const cell = figureCell(book, change.name, of);
      if (cell === undefined) return refuse('', `${of} is not in the book any more.`);
      if (!isSame(cell.value, change.after)) return changedByHand(book, cell, change);
      figures.push({ cell, after: change.before });
    }
    const { trials } = last;
    return figureWrites(book, figures, { change: 'taken back', of: last.of, trials, who }, context);
  },
});

function changedByHand(book: TrialBook, cell: FigureCell, { after }: CellChange): Refused {
  const { home, row, name } = cell;
  const shown = (value: number | undefined) =>
    value === undefined ? 'nothing' : figureText(name, value, book.index.book.shop.units);
  const place = home.sheet === 'shop' ? 'In Shop' : `In ${TABLES[home.sheet].sheet}, row ${row}`;
  return refuse(
    '',
    `${place}, ${name} holds ${shown(cell.value)} and not the ${shown(after)} that was put in use: it was changed by hand and stays as it is.`,
  );
}
