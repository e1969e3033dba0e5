import { formatPlain } from '../../units/formatPlain.ts';
import { moneyText } from '../../words/moneyText.ts';
import type { PriceLine, PriceLineKey, PriceTerms } from './price.ts';

interface Charges {
  readonly pieces: number;
  readonly perPiece: number;
  readonly subtotal: number;
  readonly rush: number;
  readonly colorMatch: number;
  readonly discount: number;
  readonly minimum: number;
  readonly excise: number;
  readonly shipping: number;
  readonly salesTax: number;
}

/** The lines of a price in the order a customer reads them; those of 0 are left out, but for the pieces. */
export function priceLines(charges: Charges, terms: PriceTerms): readonly PriceLine[] {
  const { pieces, perPiece, subtotal } = charges;
  const each = `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} at ${moneyText(perPiece, terms.currency)}`;
  const further: readonly (readonly [PriceLineKey, string, number])[] = [
    ['rush', `Rush charge ${percent(terms.rushShare)}`, charges.rush],
    ['color match', 'Color matching of a new pattern', charges.colorMatch],
    ['discount', `Discount ${percent(terms.discount)}`, 0 - charges.discount],
    ['minimum order', 'Up to the minimum order', charges.minimum],
    ['excise', 'Federal excise tax', charges.excise],
    ['shipping', 'Shipping', charges.shipping],
    ['sales tax', `Sales tax ${percent(terms.salesTaxRate)}`, charges.salesTax],
  ];
  return [
    { key: 'pieces', label: each, minor: subtotal },
    ...further
      .filter(([, , minor]) => minor !== 0)
      .map(([key, label, minor]) => ({ key, label, minor })),
  ];
}

function percent(share: number): string {
  return `${formatPlain(share * 100)} %`;
}
