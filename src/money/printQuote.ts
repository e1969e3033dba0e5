import type { PrintedQuote, QuoteShown } from '../../shared/commands/quoteCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { isRefused } from '../sidebar/orderInBook.ts';
import { readPayload } from '../sidebar/readPayload.ts';
import { requestDialog } from '../sidebar/requestDialog.ts';
import { QUOTE_FIELDS } from './acceptQuote.ts';
import { keptDocument } from './quoteDocumentFor.ts';

/**
 * Page call: opens the dialog that shows and prints a quote.
 * @param payload `{ order, quote }`
 */
export function printQuote(payload: unknown): QuoteShown | Refused {
  const read = readPayload<PrintedQuote>(QUOTE_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const document = keptDocument(read.value);
  if (isRefused(document)) return document;
  requestDialog('Quote', `Quote ${read.value.quote}`, read.value);
  return { kind: 'ok', quote: read.value.quote };
}
