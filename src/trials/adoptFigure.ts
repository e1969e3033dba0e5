import { TRIAL_TABLES } from '../../shared/book/book.ts';
import { nameKey } from '../../shared/book/bookIndex.ts';
import type { FigureChanged } from '../../shared/commands/commands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { noBondText } from '../../shared/outcomes/bond/bondText.ts';
import { noContactText } from '../../shared/trials/contact/contactText.ts';
import { isSame } from '../../shared/trials/figureCells.ts';
import { findTrials } from '../../shared/trials/findTrials.ts';
import type { TrialResult } from '../../shared/trials/proposal.ts';
import { trialBook } from '../../shared/trials/trialBook.ts';
import { wantedCells } from '../../shared/trials/wantedCells.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { type FigureAsked, readFigurePayload } from './figurePayload.ts';
import { readTrials } from './readTrials.ts';
import { writeFigures } from './writeFigures.ts';

/**
 * Page call: writes what the trials give into the plate's, the material's or the shop's own cells, and what stood there
 * into *Measured figures*. Cells that hold it already are left alone, so a double click or a second person writes nothing.
 * @param payload `{ figure, of?, who? }`
 */
export function adoptFigure(payload: unknown): FigureChanged | Refused {
  const asked = readFigurePayload(payload);
  if (asked.kind === 'refused') return asked;
  const changed = withDocumentLock(() => adopt(asked));
  return typeof changed === 'string' ? { ...readTrials(), changed } : changed;
}

/** The figure is worked out anew from the book: the page may be old. */
function adopt({ figure, of, who }: FigureAsked): FigureChanged['changed'] | Refused {
  const book = trialBook(readBookNow(TRIAL_TABLES));
  const proposal = findTrials(book).proposals.find(
    (one) => one.figure === figure && nameKey(one.of) === nameKey(of),
  );
  if (proposal === undefined) return noTrials(of);
  const { result, trials } = proposal;
  if (result.kind !== 'fitted') return nothingToUse(result, of, book.index.book.shop.units);
  const writes = wantedCells(book, proposal, result)
    .filter(({ value, wanted }) => !isSame(value, wanted))
    .map(({ wanted, standardError, ...cell }) => ({ cell, after: wanted, standardError }));
  if (writes.length === 0) return 'before';
  const refused = writeFigures(book, writes, {
    change: 'put in use',
    of: proposal.of,
    trials: trials.map(({ trial }) => trial).join(', '),
    who,
  });
  return refused ?? 'now';
}

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
