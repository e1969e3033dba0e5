import type { CurrencyCode } from '../../book/currencies.ts';
import type { ExciseLine, ExciseTerms } from '../excise/exciseLine.ts';

/** What the price of one piece is worked out from. */
export type PriceAim =
  | { readonly by: 'margin'; readonly margin: number }
  | { readonly by: 'markup'; readonly markup: number }
  /** A price already agreed: smallest units a piece. */
  | { readonly by: 'price'; readonly perPiece: number };

/** Everything that makes a line's price. Amounts are in the currency, shares are fractions. */
export interface PriceTerms {
  readonly currency: CurrencyCode;
  readonly aim: PriceAim;
  /** The price of a piece is rounded up to a multiple of this; 0 rounds up to the smallest unit. */
  readonly priceStep: number;
  /** 0 when nothing is rushed. */
  readonly rushShare: number;
  /** 0 unless the pattern's colors are matched for this order. */
  readonly colorMatchCharge: number;
  readonly minimumOrder: number;
  readonly discount: number;
  readonly shipping: number;
  /** 0 where the sale bears none (wholesale for resale, export). */
  readonly salesTaxRate: number;
  readonly depositShare: number;
  readonly excise: ExciseTerms;
}

export type PriceLineKey =
  | 'pieces'
  | 'rush'
  | 'color match'
  | 'discount'
  | 'minimum order'
  | 'excise'
  | 'shipping'
  | 'sales tax';

/** One line a customer sees; the discount is negative. */
export interface PriceLine {
  readonly key: PriceLineKey;
  readonly label: string;
  readonly minor: number;
}

/** The price of one order line, in smallest units. `total` is the sum of `lines` exactly. */
export interface Price {
  readonly kind: 'price';
  readonly currency: CurrencyCode;
  readonly pieces: number;
  readonly perPiece: number;
  /** Pieces first; lines of 0 are left out. */
  readonly lines: readonly PriceLine[];
  /** Pieces at the price of one. */
  readonly subtotal: number;
  /** Subtotal, surcharges and minimum, less discount: what is sold, tax inside included. */
  readonly goods: number;
  readonly excise: ExciseLine;
  readonly shipping: number;
  readonly salesTax: number;
  readonly total: number;
  readonly deposit: number;
  /** Total less deposit. */
  readonly balance: number;
  /** What the order cost to make. */
  readonly cost: number;
  /** What the shop keeps: goods less the excise inside them. Shipping and taxes pass through. */
  readonly net: number;
  /** (net - cost) / net; absent when nothing is kept. */
  readonly margin?: number;
  /** (net - cost) / cost; absent when nothing was spent. */
  readonly markup?: number;
}

/** Why there is no price. */
export interface NoPrice {
  readonly kind: 'no price';
  readonly because: string;
}
