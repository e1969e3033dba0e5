import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { chromium as playwright } from 'playwright-core';
import type { Host } from './host/Host.ts';
import { openHost } from './host/openHost.ts';
import { fillBook } from './server/fillBook.ts';
import { ADD_ON, freshBuilds } from './server/freshBuilds.ts';
import { chromium } from './sheet/chromium.ts';
import { makeQuotePage } from './sheet/makeQuotePage.ts';
import { makeRunSheetPage } from './sheet/makeRunSheetPage.ts';
import { SHEET_USAGE, type SheetOptions, sheetOptions } from './sheet/sheetOptions.ts';

/** What is written, and its name. */
interface Page {
  readonly name: string;
  readonly html: string;
}

function say(text: string): void {
  process.stdout.write(`${text}\n`);
}

async function writeSheet({
  order,
  out,
  kind,
  book,
  paper,
  pictures,
  quote: isQuote,
}: SheetOptions): Promise<void> {
  await freshBuilds(say);
  const isNew = !existsSync(book);
  await mkdir(dirname(book), { recursive: true });
  const host = await openHost({ dist: ADD_ON, book });
  try {
    if (isNew) await fillBook(host, 'demo', say);
    const { name, html } = isQuote
      ? await quotePage(host, order)
      : await runSheetPage(host, order, pictures);
    if (kind === 'html') await writeFile(out, html);
    else await print(html, out, paper);
    await host.save();
    say(`${name} of order ${order} is in ${out}.`);
  } finally {
    await host.close();
  }
}

async function runSheetPage(host: Host, order: string, pictures: boolean): Promise<Page> {
  const { runId, html } = await makeRunSheetPage(host, order, ADD_ON, { pictures });
  return { name: `Run sheet ${runId}`, html };
}

async function quotePage(host: Host, order: string): Promise<Page> {
  const { quote, html } = await makeQuotePage(host, order, ADD_ON);
  return { name: `Quote ${quote}`, html };
}

async function print(html: string, out: string, paper: SheetOptions['paper']): Promise<void> {
  const browser = await playwright.launch(await chromium());
  try {
    const page = await browser.newPage();
    await page.setContent(html);
    await page.waitForFunction('document.fonts.status === "loaded"');
    await page.pdf({ path: out, format: paper, preferCSSPageSize: false });
  } finally {
    await browser.close();
  }
}

try {
  await writeSheet(sheetOptions(process.argv.slice(2)));
} catch (error) {
  process.stderr.write(
    `${error instanceof Error ? error.message : String(error)}\n\n${SHEET_USAGE}\n`,
  );
  process.exitCode = 1;
}
