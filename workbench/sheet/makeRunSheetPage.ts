import { join } from 'node:path';
import { runSheetElements } from '../../shared/paper/runSheet/runSheetElements.ts';
import type { Host } from '../host/Host.ts';
import { askAddOn } from './askAddOn.ts';
import { paperPage } from './paperPage.ts';

export interface RunSheetPage {
  readonly runId: string;
  /** A whole page, its styles with it. */
  readonly html: string;
}

/**
 * Makes an order's run sheet as a person would at the panel: the built add-on lays it out in the book, moves the order
 * on, and hands over the document; the page is the one its print dialog draws.
 * @param pictures - whether a page of pictures prints behind it
 * @throws Error with the add-on's sentences when it refuses
 */
export async function makeRunSheetPage(
  host: Host,
  order: string,
  dist: string,
  { pictures = false }: { readonly pictures?: boolean } = {},
): Promise<RunSheetPage> {
  const { runId } = await askAddOn(host, 'makeRunSheet', { order });
  const { document } = await askAddOn(host, 'runSheetDocumentFor', { order, runId });
  const html = await paperPage(
    {
      dialog: join(dist, 'RunSheet.html'),
      title: `Run sheet ${runId}`,
      id: 'sheet',
      ...(pictures ? { look: 'with-pictures' } : {}),
    },
    runSheetElements(document),
  );
  return { runId, html };
}
