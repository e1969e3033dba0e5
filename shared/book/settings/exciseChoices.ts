/** How an order stands to the excise. */
export const EXCISE_STATUSES = ['taxable', 'exempt', 'export', 'further manufacture'] as const;
export type ExciseStatus = (typeof EXCISE_STATUSES)[number];

/** Whether a price holds the excise already. */
export const EXCISE_IN = ['inside the price', 'added to the price'] as const;
export type ExciseIn = (typeof EXCISE_IN)[number];

/** Whether the shop keeps books of the tax. */
export const EXCISE_CHOICES = ['by currency', 'on', 'off'] as const;

/** What the rate is taken of. */
export const EXCISE_BASES = ['sale price', 'constructive price'] as const;

export const SALE_KINDS = ['wholesale', 'retail'] as const;
