import { CURRENCY_CODES } from '../book/currencies.ts';

const MOST_MONEY = 1e9;

/** An amount in the workbook's currency. */
export const MONEY = { atLeast: 0, atMost: MOST_MONEY } as const;

/** Parameters that functions of the money family share. */
export const GAIN = {
  kind: 'number',
  measure: 'fraction',
  field: 'margin or markup',
  about: 'Margin as a share of the price, or markup on the cost.',
  bounds: { atLeast: 0, atMost: 100 },
  default: 0.45,
} as const;
export const GAIN_IS = {
  kind: 'choice',
  field: 'kind of gain',
  about: 'What that share is.',
  choices: ['margin', 'markup'],
  default: 'margin',
} as const;
export const STEP = {
  kind: 'number',
  about: 'The price of a piece is rounded up to a multiple of this; 0 is the smallest coin.',
  bounds: { atLeast: 0, atMost: 1e6 },
  default: 0.05,
} as const;
export const TAX_INSIDE = {
  kind: 'number',
  measure: 'fraction',
  about: 'Excise that the price has to hold, as a share of the price without it; 0 for none.',
  bounds: { atLeast: 0, atMost: 1 },
  default: 0,
} as const;
export const CURRENCY = {
  kind: 'choice',
  about: 'Sets the smallest coin.',
  choices: CURRENCY_CODES,
  default: 'USD',
} as const;
