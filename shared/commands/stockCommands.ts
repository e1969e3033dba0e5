import type { LotTrace } from '../money/stock/lotTrace.ts';
import type { RunUse } from '../money/stock/runUse.ts';
import type { StockSummary } from '../money/stock/stockSummary.ts';
import type { PurchasesDocument } from '../paper/purchases/purchasesElements.ts';

export interface RunOfOrder {
  readonly order: string;
  readonly run: string;
}

/** What a run takes out of stock by plan, and what was taken out for it already. */
export interface UseForm extends Omit<RunUse, 'kind'> {
  readonly kind: 'ok';
}

interface UsePayload extends RunOfOrder {
  /** As typed, by the key of a line; as planned where a material is not named. */
  readonly amounts?: Readonly<Record<string, string>> | undefined;
  readonly scrapped?: Readonly<Record<string, string>> | undefined;
}

export interface UsePosted {
  readonly kind: 'ok';
  /** `before` when everything of the run stood there already and nothing was written now. */
  readonly posted: 'now' | 'before';
  /** Rows of *Stock moves* that were written. */
  readonly rows: readonly number[];
  /** The run as it stands now. */
  readonly use: UseForm;
  /** Stocks that what was written took below nothing. */
  readonly negative: readonly string[];
}

interface StockAnswer extends StockSummary {
  readonly kind: 'ok';
}

interface TracePayload {
  /** A lot, an order or a run. */
  readonly name: string;
}

export interface TraceAnswer extends LotTrace {
  readonly kind: 'ok';
  readonly name: string;
}

interface PurchasesShown {
  readonly kind: 'ok';
}

/** The purchase list as its dialog draws it. */
interface PurchasesAnswer extends PurchasesDocument {
  readonly kind: 'ok';
}

type Nothing = Readonly<Record<string, never>>;

/** Commands of the stock. */
export interface StockCommands {
  readonly startUse: { readonly payload: RunOfOrder; readonly answer: UseForm };
  readonly postUse: { readonly payload: UsePayload; readonly answer: UsePosted };
  readonly readStock: { readonly payload: Nothing; readonly answer: StockAnswer };
  readonly traceLot: { readonly payload: TracePayload; readonly answer: TraceAnswer };
  readonly showPurchases: { readonly payload: Nothing; readonly answer: PurchasesShown };
  readonly purchasesFor: { readonly payload: Nothing; readonly answer: PurchasesAnswer };
}
