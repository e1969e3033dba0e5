import { TRIAL_TABLES } from '../../shared/book/book.ts';
import type { TrialsAnswer } from '../../shared/commands/commands.ts';
import { findTrials } from '../../shared/trials/findTrials.ts';
import { trialBook } from '../../shared/trials/trialBook.ts';
import { readBookNow } from '../platform/readBookNow.ts';

/** Page call: every figure that the book's trials give, beside the one in use; takes no payload. */
export function readTrials(): TrialsAnswer {
  return { kind: 'ok', ...findTrials(trialBook(readBookNow(TRIAL_TABLES))) };
}
