import { readFile } from 'node:fs/promises';
import { elementsToHtml, escapeHtml } from '../../shared/elements/elementsToHtml.ts';
import type { PlainElement } from '../../shared/elements/plainElement.ts';

/** What is drawn, and the built dialog whose look it has. */
interface Paper {
  /** Built file of the dialog, with the styles in it */
  readonly dialog: string;
  readonly title: string;
  /** Id and class of the place that the dialog draws into */
  readonly id: string;
  readonly look?: string;
}

/** A whole page as its print dialog draws it, styles with it. */
export async function paperPage(
  { dialog, title, id, look = '' }: Paper,
  drawn: PlainElement,
): Promise<string> {
  const styles = (await readFile(dialog, 'utf8')).match(/<style>[\s\S]*?<\/style>/g) ?? [];
  const head = `<meta charset="utf-8"><title>${escapeHtml(title)}</title>${styles.join('')}`;
  const classes = look === '' ? '' : ` class="${look}"`;
  const body = `<main id="${id}"${classes}>${elementsToHtml(drawn)}</main>`;
  return `<!DOCTYPE html><html lang="en"><head>${head}</head><body>${body}</body></html>\n`;
}
