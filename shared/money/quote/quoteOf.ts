import type { QuoteBook } from '../../book/book.ts';
import { nameKey, type OrderRow } from '../../book/bookIndex.ts';
import type { RecordOf } from '../../book/column.ts';
import type { Row } from '../../book/reading/readTable.ts';
import type { QUOTES } from '../../book/tables/quotes.ts';

export type QuoteRecord = RecordOf<typeof QUOTES>;
export type QuoteRow = Row<typeof QUOTES>;

/** The quote that an order's row names, as it was made; the last of the number where there are several. */
export function quoteOf({ quotes }: QuoteBook, { record }: OrderRow): QuoteRow | undefined {
  const same = quotes.filter(
    (one) =>
      nameKey(one.record.quote) === nameKey(record.quote) &&
      nameKey(one.record.order) === nameKey(record.order),
  );
  return record.quote === undefined ? undefined : same[same.length - 1];
}
