interface Currency {
  /** Digits after the point of the smallest unit that is paid. */
  readonly digits: number;
  /** `#` stands for the figure; the blank is one that no line breaks at. */
  readonly pattern: string;
  readonly point: string;
  readonly group: string;
}

/**
 * Currencies a workbook can be kept in, by their ISO 4217 code, and how their amounts are written.
 *
 * Dollars other than the US carry their country's letters. The kronor and kroner share a sign, as they do in use: a
 * document names the code once.
 * @source ISO4217, CLDR
 */
export const CURRENCIES = {
  USD: { digits: 2, pattern: '$#', point: '.', group: ',' },
  AUD: { digits: 2, pattern: 'A$#', point: '.', group: ',' },
  BRL: { digits: 2, pattern: 'R$\u00a0#', point: ',', group: '.' },
  CAD: { digits: 2, pattern: 'CA$#', point: '.', group: ',' },
  CHF: { digits: 2, pattern: 'CHF\u00a0#', point: '.', group: '’' },
  CZK: { digits: 2, pattern: '#\u00a0Kč', point: ',', group: '\u00a0' },
  DKK: { digits: 2, pattern: '#\u00a0kr.', point: ',', group: '.' },
  EUR: { digits: 2, pattern: '#\u00a0€', point: ',', group: '.' },
  GBP: { digits: 2, pattern: '£#', point: '.', group: ',' },
  JPY: { digits: 0, pattern: '¥#', point: '.', group: ',' },
  KRW: { digits: 0, pattern: '₩#', point: '.', group: ',' },
  KWD: { digits: 3, pattern: 'KWD\u00a0#', point: '.', group: ',' },
  MXN: { digits: 2, pattern: 'MX$#', point: '.', group: ',' },
  NOK: { digits: 2, pattern: '#\u00a0kr', point: ',', group: '\u00a0' },
  NZD: { digits: 2, pattern: 'NZ$#', point: '.', group: ',' },
  PLN: { digits: 2, pattern: '#\u00a0zł', point: ',', group: '\u00a0' },
  SEK: { digits: 2, pattern: '#\u00a0kr', point: ',', group: '\u00a0' },
  ZAR: { digits: 2, pattern: 'R\u00a0#', point: ',', group: '\u00a0' },
} as const satisfies Readonly<Record<string, Currency>>;

export type CurrencyCode = keyof typeof CURRENCIES;

// The keys of a constant record are its codes.
export const CURRENCY_CODES = Object.keys(CURRENCIES) as readonly CurrencyCode[];
