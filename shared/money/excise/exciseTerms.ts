import type { CurrencyCode } from '../../book/currencies.ts';
import type {
  EXCISE_BASES,
  EXCISE_CHOICES,
  ExciseIn,
  ExciseStatus,
  SALE_KINDS,
} from '../../book/settings/exciseChoices.ts';
import type { ExciseTerms } from './exciseLine.ts';

/** The shop's settings of the tax, under the keys of the sheet *Shop*. */
export interface ExciseSettings {
  readonly currency: CurrencyCode;
  readonly excise: (typeof EXCISE_CHOICES)[number];
  readonly exciseRate: number;
  readonly exciseBase: (typeof EXCISE_BASES)[number];
  readonly constructiveShare: number;
  readonly exciseIn: ExciseIn;
}

/**
 * How one sale is taxed. The tax is the US one: by currency it is on for US dollars only.
 *
 * A constructive price stands in for the sale price of retail sales only, where the shop chose it; its share is an assumption
 * of the shop, not of the law.
 * @param sale blank status is taxable, blank kind wholesale
 * @source IRC4161, IRC4216
 */
export function exciseTerms(
  settings: ExciseSettings,
  sale: {
    readonly saleKind?: (typeof SALE_KINDS)[number] | undefined;
    readonly exciseStatus?: ExciseStatus | undefined;
  },
): ExciseTerms {
  const { excise, exciseBase } = settings;
  const isConstructive = exciseBase === 'constructive price' && sale.saleKind === 'retail';
  return {
    isOn: excise === 'on' || (excise === 'by currency' && settings.currency === 'USD'),
    rate: settings.exciseRate,
    baseShare: isConstructive ? settings.constructiveShare : 1,
    taxIn: settings.exciseIn,
    status: sale.exciseStatus ?? 'taxable',
  };
}
