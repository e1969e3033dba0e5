import { TRIAL_TABLES } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import { noBondText } from '../../outcomes/bond/bondTexts.ts';
import { noContactText } from '../../trials/contact/contactRemarkText.ts';
import { isSame } from '../../trials/figureCell.ts';
import { findTrials } from '../../trials/findTrials.ts';
import type { TrialResult } from '../../trials/proposal.ts';
import { trialBook } from '../../trials/trialBook.ts';
import { wantedCells } from '../../trials/wantedCells.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { decided, isRefused, writeCommand } from '../command.ts';
import { FIGURE_FIELDS, figureAsked } from './figureAsked.ts';
import { figureWrites } from './figureWrites.ts';

/**
 * Writes what the trials give into the plate's, the material's or the shop's own cells, and what stood there into *Measured
 * figures*. The figure is worked out anew from the book, since the page may be old; cells that hold it already are left alone, so a double
 * click or a second person writes nothing.
 */
export const adoptFigure = writeCommand<'adoptFigure', (typeof TRIAL_TABLES)[number]>({
  payload: FIGURE_FIELDS,
  tables: TRIAL_TABLES,
  decide: (payload, records, context) => {
    const asked = figureAsked(payload);
    if (isRefused(asked)) return asked;
    const { figure, of, who } = asked;
    const book = trialBook(records);
    const found = findTrials(book);
    const proposal = found.proposals.find(
      (one) => one.figure === figure && nameKey(one.of) === nameKey(of),
    );
    if (proposal === undefined) return noTrials(of);
    const { result, trials } = proposal;
    if (result.kind !== 'fitted') return nothingToUse(result, of, records.shop.units);
    const figures = wantedCells(book, proposal, result)
      .filter(({ value, wanted }) => !isSame(value, wanted))
      .map(({ wanted, standardError, ...cell }) => ({ cell, after: wanted, standardError }));
    if (figures.length === 0) return decided({ kind: 'ok', ...found, changed: 'before' });
    const names = trials.map(({ trial }) => trial).join(', ');
    const facts = { change: 'put in use', of: proposal.of, trials: names, who } as const;
    return figureWrites(book, figures, facts, context);
  },
});

function nothingToUse(
  result: Exclude<TrialResult, { kind: 'fitted' }>,
  of: string,
  system: UnitSystem,
): Refused {
  if (result.kind === 'no fit') return refuse('', noContactText(result.because));
  if (result.kind === 'no bond') return refuse('', noBondText(result.fit, system));
  return result.kind === 'beyond' ? refuse('', result.text) : noTrials(of);
}

function noTrials(of: string): Refused {
  return refuse(
    '',
    of === '' ? 'The book holds no trial of this.' : `The book holds no trial of this for ${of}.`,
  );
}
