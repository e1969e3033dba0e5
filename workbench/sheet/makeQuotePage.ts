import { join } from 'node:path';
import { quoteElements } from '../../shared/paper/quote/quoteElements.ts';
import type { Host } from '../host/Host.ts';
import { askAddOn } from './askAddOn.ts';
import { paperPage } from './paperPage.ts';

/**
 * The quote of an order as a page: the one that the order has, as it was made, else a new one at the target margin and the
 * terms in its row.
 * @throws Error with the add-on's sentences when it refuses
 */
export async function makeQuotePage(
  host: Host,
  order: string,
  dist: string,
): Promise<{ readonly quote: string; readonly html: string }> {
  const form = await askAddOn(host, 'startQuote', { order });
  const kept = form.quoted?.total === undefined ? undefined : form.quoted.quote;
  const { token, values } = form;
  const quote = kept ?? (await askAddOn(host, 'makeQuote', { order, token, values })).quote;
  const { document } = await askAddOn(host, 'quoteDocumentFor', { order, quote });
  const page = { dialog: join(dist, 'Quote.html'), title: `Quote ${quote}`, id: 'quote' };
  return { quote, html: await paperPage(page, quoteElements(document)) };
}
