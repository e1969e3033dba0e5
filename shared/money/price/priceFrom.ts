import { requireNumber } from '../../errors/requireNumber.ts';
import { type ExciseTerms, effectiveRate, exciseLine } from '../excise/exciseLine.ts';
import { LARGEST_MINOR, shareMinor, toMinor } from '../toMinor.ts';
import { gainOf } from './marginOfMarkup.ts';
import { piecePrice } from './piecePrice.ts';
import type { NoPrice, Price, PriceTerms } from './price.ts';
import { priceLines } from './priceLines.ts';
import { salesTaxOn } from './salesTaxOn.ts';
import { stepMinor } from './stepMinor.ts';

/**
 * Price of an order line from what it costs, with every charge, tax and the margin that results.
 *
 * pieces = price of one x pieces; rush = share of the pieces; discount = share of pieces, rush and color match;
 * the minimum order lifts what is left; goods = all of these. Excise is taken from the goods or added to them; sales tax =
 * share of the goods and the excise added, not of shipping; total = goods + excise added + shipping + sales tax;
 * deposit = share of the total. Each line is rounded to the smallest unit once, and the total is their sum.
 * @param order `pieces`, 1 to 100,000; `cost` of the whole order in smallest units, >= 0
 * @returns the price, or why there is none
 * @throws InputError on a figure out of range
 */
export function priceFrom(
  order: { readonly pieces: number; readonly cost: number },
  terms: PriceTerms,
): Price | NoPrice {
  const { pieces, cost } = order;
  const { currency } = terms;
  requireNumber(pieces, 'pieces', { atLeast: 1, atMost: 100_000, whole: true });
  requireNumber(cost, 'cost', { atLeast: 0, atMost: LARGEST_MINOR, whole: true });
  requireTerms(terms);
  const perPiece = piecePrice({
    cost: cost / pieces,
    aim: terms.aim,
    step: stepMinor(terms.priceStep, currency),
    taxInside: taxInside(terms.excise),
  });
  if (typeof perPiece !== 'number') return perPiece;
  const subtotal = perPiece * pieces;
  if (subtotal > LARGEST_MINOR)
    return { kind: 'no price', because: 'so many pieces at that price pass all sense' };
  const rush = shareMinor(subtotal, terms.rushShare);
  const colorMatch = toMinor(terms.colorMatchCharge, currency, 'color match charge');
  const discount = shareMinor(subtotal + rush + colorMatch, terms.discount);
  const beforeMinimum = subtotal + rush + colorMatch - discount;
  const minimum = Math.max(
    0,
    toMinor(terms.minimumOrder, currency, 'minimum order') - beforeMinimum,
  );
  const goods = beforeMinimum + minimum;
  const excise = exciseLine(goods, terms.excise);
  const shipping = toMinor(terms.shipping, currency, 'shipping');
  const salesTax = salesTaxOn(goods, excise, terms);
  const charges = { rush, colorMatch, discount, minimum, excise: excise.added, shipping, salesTax };
  const lines = priceLines({ pieces, perPiece, subtotal, ...charges }, terms);
  const total = lines.reduce((sum, line) => sum + line.minor, 0);
  const deposit = shareMinor(total, terms.depositShare);
  const net = goods - excise.inside;
  return {
    kind: 'price',
    currency,
    pieces,
    perPiece,
    lines,
    subtotal,
    goods,
    excise,
    shipping,
    salesTax,
    total,
    deposit,
    balance: total - deposit,
    cost,
    net,
    ...gainOf(net, cost),
  };
}

function taxInside(excise: ExciseTerms): number {
  return excise.taxIn === 'inside the price' ? effectiveRate(excise) : 0;
}

function requireTerms(terms: PriceTerms): void {
  requireNumber(terms.priceStep, 'price step', { atLeast: 0 });
  requireNumber(terms.rushShare, 'rush charge', { atLeast: 0, atMost: 10 });
  requireNumber(terms.colorMatchCharge, 'color match charge', { atLeast: 0 });
  requireNumber(terms.minimumOrder, 'minimum order', { atLeast: 0 });
  requireNumber(terms.discount, 'discount', { atLeast: 0, atMost: 1 });
  requireNumber(terms.shipping, 'shipping', { atLeast: 0 });
  requireNumber(terms.salesTaxRate, 'sales tax', { atLeast: 0, atMost: 1 });
  requireNumber(terms.depositShare, 'deposit', { atLeast: 0, atMost: 1 });
}
