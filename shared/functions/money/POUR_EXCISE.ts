import { EXCISE_IN, EXCISE_STATUSES } from '../../book/settings/exciseChoices.ts';
import { exciseLine } from '../../money/excise/exciseLine.ts';
import { fromMinor, toMinor } from '../../money/toMinor.ts';
import { defineFunction } from '../defineFunction.ts';
import { CURRENCY, MONEY } from '../money.ts';

export const POUR_EXCISE = defineFunction({
  name: 'POUR_EXCISE',
  family: 'money',
  about: 'US federal excise on a sale of lures: what is taxed, the tax, what the customer pays.',
  params: {
    price: {
      kind: 'number',
      about: 'Of the goods with packing, less discount, without shipping and sales tax.',
      bounds: MONEY,
    },
    taxIn: {
      kind: 'choice',
      about: 'Where the tax is.',
      choices: EXCISE_IN,
      default: 'inside the price',
    },
    rate: {
      kind: 'number',
      measure: 'fraction',
      about: 'Rate of the tax.',
      bounds: { atLeast: 0, atMost: 1 },
      default: 0.1,
    },
    baseShare: {
      kind: 'number',
      measure: 'fraction',
      about: 'Share of the price without the tax that is taxed; below 1 for a constructive price.',
      bounds: { greaterThan: 0, atMost: 1 },
      default: 1,
    },
    status: {
      kind: 'choice',
      about: 'Whether the sale is taxed.',
      choices: EXCISE_STATUSES,
      default: 'taxable',
    },
    currency: CURRENCY,
  },
  returns: [
    { name: 'base', about: 'What is taxed', kind: 'number' },
    { name: 'tax', about: 'Owed for the sale', kind: 'number' },
    { name: 'paid', about: 'By the customer, before shipping and sales tax', kind: 'number' },
  ],
  examples: [
    { args: [100], result: [90.91, 9.09, 100], source: 'EXCISE-ARITHMETIC, 100 / 1.1' },
    {
      args: [100, 'added to the price'],
      result: [100, 10, 110],
      source: 'EXCISE-ARITHMETIC, 10 % of 100',
    },
    {
      args: [100, '', '', '', 'export'],
      result: [0, 0, 100],
      source: 'the sale is not taxed, so nothing of the price is tax',
    },
  ],
  notes:
    '26 USC 4161(a), 10 % of the maker’s price (copy checked 2026-06-20); 26 CFR 48.4161(a)-1 (checked 2024-11-25); packing counts and transport does not, IRC 4216(a). A price is presumed to hold the tax, Rev. Rul. 65-41: tax = price x rate / (1 + rate). Ask a tax adviser.',
  compute: ({ price, currency, ...terms }) => {
    const goods = toMinor(price, currency);
    const { base, tax, added } = exciseLine(goods, { ...terms, isOn: true });
    return [base, tax, goods + added].map((minor) => fromMinor(minor, currency));
  },
});
