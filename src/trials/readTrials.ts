import type { TrialsAnswer } from '../../shared/commands/commands.ts';
import { findTrials } from '../../shared/trials/findTrials.ts';
import { readTrialBookNow } from './readTrialBookNow.ts';

/** Page call: every figure that the book's trials give, beside the one in use; takes no payload. */
export function readTrials(): TrialsAnswer {
  return { kind: 'ok', ...findTrials(readTrialBookNow()) };
}
