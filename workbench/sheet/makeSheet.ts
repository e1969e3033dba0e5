import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { RunSheetDocument } from '../../shared/runSheet/documentTypes.ts';
import { elementsToHtml } from '../../shared/runSheet/elementsToHtml.ts';
import { runSheetElements } from '../../shared/runSheet/runSheetElements.ts';
import type { Host } from '../host/Host.ts';

export interface MadeSheet {
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
export async function makeSheet(
  host: Host,
  order: string,
  dist: string,
  { pictures = false }: { readonly pictures?: boolean } = {},
): Promise<MadeSheet> {
  const made = await ask(host, 'makeRunSheet', { order });
  const runId = String(made['runId']);
  const answer = await ask(host, 'runSheetDocumentFor', { order, runId });
  const document = answer['document'] as RunSheetDocument; // the verb's own answer, as its type says
  const styles =
    (await readFile(join(dist, 'RunSheet.html'), 'utf8')).match(/<style>[\s\S]*?<\/style>/g) ?? [];
  const head = `<meta charset="utf-8"><title>Run sheet ${encodeURIComponent(runId)}</title>${styles.join('')}`;
  const look = pictures ? ' class="with-pictures"' : '';
  const body = `<main id="sheet"${look}>${elementsToHtml(runSheetElements(document))}</main>`;
  return {
    runId,
    html: `<!DOCTYPE html><html lang="en"><head>${head}</head><body>${body}</body></html>\n`,
  };
}

async function ask(
  host: Host,
  verb: string,
  payload: unknown,
): Promise<Readonly<Record<string, unknown>>> {
  const from = { window: 'sheet', selection: { sheet: 'Orders', range: 'A1' } };
  const result = await host.call(verb, [payload], from);
  if (result.kind === 'failure') throw new Error(result.message);
  const answer = result.value as { kind: string; problems?: readonly { text: string }[] }; // every verb answers so
  if (answer.kind !== 'ok')
    throw new Error((answer.problems ?? []).map(({ text }) => text).join('; '));
  return { ...answer };
}
