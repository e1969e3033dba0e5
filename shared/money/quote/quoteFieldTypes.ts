/** How the price of a piece is set. */
export const AIM_KINDS = ['target margin', 'markup', 'price of a piece'] as const;

/** What is sold: typed where no row of *Orders* says it. */
export const GOODS_KEYS = ['customer', 'mold', 'pattern', 'quantity', 'due', 'moldsInUse'] as const;

/** At what terms it is sold. */
export const PRICING_KEYS = [
  'by',
  'aim',
  'rush',
  'discount',
  'shipping',
  'saleKind',
  'exciseStatus',
] as const;

export type GoodsKey = (typeof GOODS_KEYS)[number];
type PricingKey = (typeof PRICING_KEYS)[number];
export type QuoteKey = GoodsKey | PricingKey;

/** Fields of a quote as typed; a blank one may be left out. */
export type QuoteValues = Readonly<Partial<Record<QuoteKey, string>>>;

/** Most characters of a field. */
export const LONGEST_FIELD = 100;
