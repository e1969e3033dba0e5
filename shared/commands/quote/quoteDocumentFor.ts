import type { Book } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import type { QuoteDocument } from '../../money/quote/quoteDocument.ts';
import { readQuoteDocument } from '../../money/quote/readQuoteDocument.ts';
import { decided, isRefused, readCommand, showCommand } from '../command.ts';
import type { PrintedQuote } from '../quoteCommands.ts';
import { NEEDED_TEXT } from '../readPayload.ts';

const PAYLOAD = { order: NEEDED_TEXT, quote: NEEDED_TEXT } as const;

/** A quote as it was made, whatever changed in the book since. */
export const quoteDocumentFor = readCommand<'quoteDocumentFor', 'quotes'>({
  payload: PAYLOAD,
  tables: ['quotes'],
  answer: (asked, book) => {
    const document = keptDocument(book, asked);
    return isRefused(document) ? document : { kind: 'ok', document };
  },
});

/** Opens the dialog that shows and prints a quote. */
export const printQuote = showCommand<'printQuote', 'quotes'>({
  payload: PAYLOAD,
  tables: ['quotes'],
  decide: (asked, book) => {
    const document = keptDocument(book, asked);
    if (isRefused(document)) return document;
    const { quote } = asked;
    const answer = { kind: 'ok', document };
    return decided(
      { kind: 'ok', quote },
      { shows: { dialog: 'Quote', title: `Quote ${quote}`, request: asked, answer } },
    );
  },
});

function keptDocument(
  { quotes }: Pick<Book<'quotes'>, 'quotes'>,
  { order, quote }: PrintedQuote,
): QuoteDocument | Refused {
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
