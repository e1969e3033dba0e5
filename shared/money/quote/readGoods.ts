import { parseCell } from '../../book/reading/parseCell.ts';
import { ORDERS } from '../../book/tables/orders.ts';
import type { OrderRecord } from '../../book/tables.ts';
import { describe } from '../../errors/describe.ts';
import type { Refused } from '../../errors/refuse.ts';
import { fieldReader } from './fieldReader.ts';
import { GOODS_KEYS, type GoodsKey, type QuoteValues } from './quoteFieldTypes.ts';

const NEEDED: readonly GoodsKey[] = ['mold', 'pattern', 'quantity'];

/** What is asked for as typed, or everything that is wrong with it at once. */
export function readGoods(
  values: QuoteValues,
): { readonly kind: 'goods'; readonly record: Pick<OrderRecord, GoodsKey> } | Refused {
  const { problems, take } = fieldReader(values);
  const field = (key: GoodsKey) => ORDERS.columns[key].heading.toLowerCase();
  const record = Object.fromEntries(
    GOODS_KEYS.map((key) => [
      key,
      take(key, (text) => parseCell(text, ORDERS.columns[key], { field: field(key) })),
    ]),
  ) as Pick<OrderRecord, GoodsKey>; // each was parsed by its own column
  const lacking = NEEDED.filter((key) => (values[key] ?? '').trim() === '').map((key) => ({
    field: key,
    text: describe({ field: field(key), rule: { kind: 'given' }, value: '' }),
  }));
  const all = [...lacking, ...problems];
  return all.length > 0 ? { kind: 'refused', problems: all } : { kind: 'goods', record };
}
