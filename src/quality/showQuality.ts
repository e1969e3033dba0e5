import type { QualityPayload, QualityShown } from '../../shared/commands/qualityCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { readPayload } from '../sidebar/readPayload.ts';
import { requestDialog } from '../sidebar/requestDialog.ts';
import { QUALITY_FIELDS } from './qualityFields.ts';

/**
 * Page call: opens the dialog that shows and prints the quality; it asks for the figures itself.
 * @param payload `{ mold?, pattern?, points? }`
 */
export function showQuality(payload: unknown): QualityShown | Refused {
  const read = readPayload<QualityPayload>(QUALITY_FIELDS, payload);
  if (read.kind === 'refused') return read;
  requestDialog('Quality', 'Quality', read.value);
  return { kind: 'ok' };
}
