import { ORDERS } from '../../shared/book/tables/orders.ts';
import type { QuoteForm } from '../../shared/commands/quoteCommands.ts';
import {
  AIM_KINDS,
  type GoodsKey,
  type QuoteKey,
  type QuoteValues,
} from '../../shared/money/quote/quoteFieldTypes.ts';
import type { Options } from '../page/selectOf.ts';
import type { QuoteField } from './quoteField.ts';

/** What is asked for, where no row of *Orders* says it. */
export function goodsFields({ choices }: QuoteForm): readonly QuoteField[] {
  const listed = (names: readonly string[], first: string): Options => [
    ['', first],
    ...names.map((name) => [name, name] as const),
  ];
  return [
    {
      key: 'mold',
      label: headingOf('mold'),
      options: listed(choices.molds, 'Choose a mold'),
      isNeeded: true,
    },
    {
      key: 'pattern',
      label: headingOf('pattern'),
      options: listed(choices.patterns, 'Choose a pattern'),
      isNeeded: true,
    },
    { key: 'quantity', label: headingOf('quantity'), type: 'decimal', isNeeded: true },
    { key: 'due', label: headingOf('due'), type: 'date' },
    { key: 'customer', label: headingOf('customer') },
    { key: 'moldsInUse', label: headingOf('moldsInUse'), type: 'decimal' },
  ];
}

/** At what terms it is sold. */
export function pricingFields({ currency }: QuoteForm, { by }: QuoteValues): readonly QuoteField[] {
  const aim = AIM_KINDS.find((kind) => kind === by) ?? AIM_KINDS[0];
  const unit = aim === 'price of a piece' ? currency : '%';
  const { saleKind, exciseStatus } = ORDERS.columns;
  return [
    { key: 'by', label: 'Price by', options: AIM_KINDS.map((kind) => [kind, capital(kind)]) },
    { key: 'aim', label: `${capital(aim)} (${unit})`, type: 'decimal' },
    { key: 'discount', label: `${headingOf('discount')} (%)`, type: 'decimal' },
    { key: 'shipping', label: `${headingOf('shipping')} (${currency})`, type: 'decimal' },
    {
      key: 'rush',
      label: headingOf('rush'),
      options: [
        ['', 'No rush'],
        ['rush', 'Rush'],
      ],
    },
    { key: 'saleKind', label: headingOf('saleKind'), options: usualFirst(saleKind.choices) },
    {
      key: 'exciseStatus',
      label: headingOf('exciseStatus'),
      options: usualFirst(exciseStatus.choices),
    },
  ];
}

/** A blank cell means the first choice; the row may also name it. */
function usualFirst(choices: readonly string[]): Options {
  const [usual = '', ...others] = choices;
  return [['', capital(usual)], ...others.map((one) => [one, capital(one)] as const)];
}

function headingOf(key: GoodsKey | Exclude<QuoteKey, GoodsKey | 'by' | 'aim'>): string {
  return ORDERS.columns[key].heading;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
