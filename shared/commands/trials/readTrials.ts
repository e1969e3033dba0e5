import { TRIAL_TABLES } from '../../book/book.ts';
import { findTrials } from '../../trials/findTrials.ts';
import { trialBook } from '../../trials/trialBook.ts';
import { readCommand } from '../command.ts';

/** Every figure that the book's trials give, beside the one in use. */
export const readTrials = readCommand<'readTrials', (typeof TRIAL_TABLES)[number]>({
  payload: {},
  tables: TRIAL_TABLES,
  answer: (_asked, book) => ({ kind: 'ok', ...findTrials(trialBook(book)) }),
});
