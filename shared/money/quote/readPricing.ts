import type { CurrencyCode } from '../../book/currencies.ts';
import { parseCell, parseNumber } from '../../book/reading/parseCell.ts';
import type { Shop } from '../../book/settings/settings.ts';
import { ORDERS_MONEY } from '../../book/tables/ordersMoney.ts';
import type { OrderRecord } from '../../book/tables.ts';
import { describe } from '../../errors/describe.ts';
import { InputError } from '../../errors/InputError.ts';
import type { Refused } from '../../errors/refuse.ts';
import type { Bounds } from '../../errors/requireNumber.ts';
import { typedChoice } from '../../errors/typedChoice.ts';
import type { PriceAim } from '../price/price.ts';
import { fromMinor, toMinor } from '../toMinor.ts';
import { fieldReader } from './fieldReader.ts';
import { AIM_KINDS, type QuoteValues } from './quoteFieldTypes.ts';

/** At what terms something is sold. */
export interface Pricing {
  readonly aim: PriceAim;
  readonly terms: Pick<OrderRecord, 'rush' | 'discount' | 'shipping' | 'saleKind' | 'exciseStatus'>;
}

export type PricingRead = { readonly kind: 'pricing'; readonly pricing: Pricing } | Refused;

/** Shares are typed in per cent. */
const PERCENT: Readonly<Record<'margin' | 'markup', Bounds>> = {
  margin: { atLeast: 0, lessThan: 1 },
  markup: { atLeast: 0, atMost: 100 },
};

/** More than any piece costs. */
const DEAREST = 1e6;

/** The terms of a sale as typed, or everything that is wrong with them at once. */
export function readPricing(
  values: QuoteValues,
  { currency, targetMargin }: Pick<Shop, 'currency' | 'targetMargin'>,
): PricingRead {
  const { problems, take } = fieldReader(values);
  const by = take('by', (text) => typedChoice(text, 'price by', AIM_KINDS)) ?? AIM_KINDS[0];
  const aim = take('aim', (text) => aimOf(by, text, currency));
  const column = (key: 'rush' | 'shipping' | 'saleKind' | 'exciseStatus') =>
    take(key, (text) => {
      const { heading } = ORDERS_MONEY[key];
      return parseCell(text, ORDERS_MONEY[key], { field: heading.toLowerCase() });
    });
  const terms = {
    rush: column('rush'),
    discount: take('discount', (text) => percent(text, 'discount', ORDERS_MONEY.discount.bounds)),
    shipping: column('shipping'),
    saleKind: column('saleKind'),
    exciseStatus: column('exciseStatus'),
  } as Pricing['terms']; // each was parsed by its own column
  const isBlank = (values.aim ?? '').trim() === '';
  const lacking =
    isBlank && by !== 'target margin'
      ? [{ field: 'aim', text: describe({ field: by, rule: { kind: 'given' }, value: '' }) }]
      : [];
  if (problems.length + lacking.length > 0)
    return { kind: 'refused', problems: [...problems, ...lacking] };
  return {
    kind: 'pricing',
    pricing: { aim: aim ?? { by: 'margin', margin: targetMargin }, terms },
  };
}

function aimOf(by: string, text: string, currency: CurrencyCode): PriceAim {
  if (by === 'target margin') return { by: 'margin', margin: percent(text, by, PERCENT.margin) };
  if (by === 'markup') return { by, markup: percent(text, by, PERCENT.markup) };
  const amount = parseNumber(text, by, { atLeast: 0, atMost: DEAREST }, undefined);
  const minor = toMinor(amount, currency, by);
  if (fromMinor(minor, currency) === amount) return { by: 'price', perPiece: minor };
  const wanted = `an amount that can be paid in ${currency}`;
  throw new InputError({ field: by, rule: { kind: 'form', wanted }, value: text });
}

/** A share typed in per cent, with the sign or without. */
function percent(text: string, field: string, bounds: Bounds): number {
  const plain = text.replace(/\s*%$/, '');
  if (plain === '')
    throw new InputError({ field, rule: { kind: 'number' }, value: text, unit: 'percent' });
  return Number(parseNumber(plain, field, bounds, 'percent').toPrecision(12));
}
