import { QUOTE_TABLES } from '../../shared/book/book.ts';
import { nameKey } from '../../shared/book/bookIndex.ts';
import type { PrintedQuote, QuoteDocumentAnswer } from '../../shared/commands/quoteCommands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import type { QuoteDocument } from '../../shared/money/quote/quoteDocument.ts';
import { readQuoteDocument } from '../../shared/money/quote/readQuoteDocument.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { isRefused } from '../sidebar/orderInBook.ts';
import { readPayload } from '../sidebar/readPayload.ts';
import { QUOTE_FIELDS } from './acceptQuote.ts';

/**
 * Page call: a quote as it was made, whatever changed in the book since.
 * @param payload `{ order, quote }`
 */
export function quoteDocumentFor(payload: unknown): QuoteDocumentAnswer | Refused {
  const read = readPayload<PrintedQuote>(QUOTE_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const document = keptDocument(read.value);
  return isRefused(document) ? document : { kind: 'ok', document };
}

export function keptDocument({ order, quote }: PrintedQuote): QuoteDocument | Refused {
  const { quotes } = readBookNow(QUOTE_TABLES);
  const kept = quotes.filter(
    ({ record }) =>
      nameKey(record.quote) === nameKey(quote) && nameKey(record.order) === nameKey(order),
  );
  const { printed } = kept[kept.length - 1]?.record ?? {};
  const document = printed === undefined ? undefined : readQuoteDocument(printed);
  return (
    document ??
    refuse(
      '',
      kept.length === 0
        ? `Quote ${quote} of order ${order} is not in Quotes: make the quote again.`
        : `Quote ${quote} was changed in Quotes and cannot be printed: make the quote again.`,
    )
  );
}
