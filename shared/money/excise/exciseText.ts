import type { CurrencyCode } from '../../book/currencies.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import { moneyText } from '../../words/moneyText.ts';
import type { ExciseLine } from './exciseLine.ts';

/** Stands with every figure of the tax. */
export const EXCISE_SOURCE =
  'US excise on sport fishing equipment: 26 USC 4161(a) (copy checked 2026-06-20), 26 CFR 48.4161(a)-1 (checked 2024-11-25), IRC 4216(a). Ask a tax adviser.';

/** One sentence on the tax of a sale: what it comes to, or why there is none. */
export function exciseText(line: ExciseLine, currency: CurrencyCode): string {
  switch (line.reason) {
    case 'off':
      return 'Excise is off in Shop';
    case 'exempt':
      return 'No excise: the sale is marked exempt';
    case 'export':
      return 'No excise: the sale is marked for export';
    case 'further manufacture':
      return 'No excise: the sale is marked for further manufacture';
    case 'taxable': {
      const tax = moneyText(line.tax, currency);
      const where = line.added > 0 ? 'added to the price' : 'inside the price';
      return `Excise of ${formatPlain(line.rate * 100)} % on ${moneyText(line.base, currency)}: ${tax}, ${where}`;
    }
  }
}
