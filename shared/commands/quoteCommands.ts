import type { CurrencyCode } from '../book/currencies.ts';
import type { Missing } from '../book/missingCells.ts';
import type { QuoteDocument } from '../money/quote/quoteDocument.ts';
import type { QuoteFacts } from '../money/quote/quoteFacts.ts';
import type { QuoteValues } from '../money/quote/quoteFieldTypes.ts';

export interface StartQuotePayload {
  /** An order by its number. */
  readonly order?: string | undefined;
  /** `selected` takes the row of the current cell; a blank form where both are left out. */
  readonly from?: 'selected' | undefined;
}

/** A quote that an order's row names. */
export interface QuotedBefore {
  readonly quote: string;
  readonly quotedOn: string;
  readonly validUntil: string;
  readonly isExpired: boolean;
  /** What the customer pays by it, in smallest units; absent where *Quotes* does not hold it, so that it can be neither printed nor accepted. */
  readonly total?: number;
}

/** What the quote form needs, and a token that makes its quote one of a kind. */
export interface QuoteForm {
  readonly kind: 'ok';
  /** `""` where there is no row of *Orders* yet. */
  readonly order: string;
  readonly currency: CurrencyCode;
  readonly choices: {
    readonly molds: readonly string[];
    readonly patterns: readonly string[];
  };
  /** As the fields start, by their keys. */
  readonly values: QuoteValues;
  readonly token: string;
  /** What it costs; absent while there is nothing to price. */
  readonly facts?: QuoteFacts;
  /** What keeps the order from having a price. */
  readonly missing: readonly Missing[];
  /** Why the order cannot be quoted, in a sentence. */
  readonly notQuotable?: string;
  readonly quoted?: QuotedBefore;
  /** What was agreed, once it was. */
  readonly accepted?: {
    readonly on: string;
    /** Smallest units; absent where no price is agreed. */
    readonly price?: number;
    /** Share of it that is left when the cost is paid. */
    readonly margin?: number;
  };
}

export interface QuotePayload {
  /** An order of the book; what is typed where it is left out. */
  readonly order?: string | undefined;
  readonly values: QuoteValues;
}

interface QuoteFactsAnswer {
  readonly kind: 'ok';
  readonly facts: QuoteFacts;
}

export interface MakeQuotePayload extends QuotePayload {
  readonly token: string;
}

export interface QuoteMade {
  readonly kind: 'ok';
  /** `before` when the same quote had been made already and nothing was written now. */
  readonly made: 'now' | 'before';
  readonly quote: string;
  readonly order: string;
  /** The order as it stands now. */
  readonly form: QuoteForm;
}

interface QuoteAccepted {
  readonly kind: 'ok';
  /** `before` when it had been accepted already and nothing was written now. */
  readonly accepted: 'now' | 'before';
  readonly on: string;
  readonly form: QuoteForm;
}

interface QuoteShown {
  readonly kind: 'ok';
  readonly quote: string;
}

/** Names the quote of an order, as a dialog asks for it. */
export interface PrintedQuote {
  readonly order: string;
  readonly quote: string;
}

interface QuoteDocumentAnswer {
  readonly kind: 'ok';
  readonly document: QuoteDocument;
}

/** Commands of the quotes. */
export interface QuoteCommands {
  readonly startQuote: { readonly payload: StartQuotePayload; readonly answer: QuoteForm };
  readonly quoteFor: { readonly payload: QuotePayload; readonly answer: QuoteFactsAnswer };
  readonly makeQuote: { readonly payload: MakeQuotePayload; readonly answer: QuoteMade };
  readonly acceptQuote: { readonly payload: PrintedQuote; readonly answer: QuoteAccepted };
  readonly printQuote: { readonly payload: PrintedQuote; readonly answer: QuoteShown };
  readonly quoteDocumentFor: {
    readonly payload: PrintedQuote;
    readonly answer: QuoteDocumentAnswer;
  };
}
