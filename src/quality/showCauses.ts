import type { CausesPayload, CausesShown } from '../../shared/commands/causeCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { readPayload } from '../sidebar/readPayload.ts';
import { requestDialog } from '../sidebar/requestDialog.ts';
import { CAUSE_FIELDS } from './causeFields.ts';

/**
 * Page call: opens the dialog that shows and prints the causes of a round; it asks for them itself.
 * @param payload `{ row? }`
 */
export function showCauses(payload: unknown): CausesShown | Refused {
  const read = readPayload<CausesPayload>(CAUSE_FIELDS, payload);
  if (read.kind === 'refused') return read;
  requestDialog('Causes', 'What went wrong', read.value);
  return { kind: 'ok' };
}
