import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { type Browser, chromium as playwright } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Host } from '../../../workbench/host/Host.ts';
import { openHost } from '../../../workbench/host/openHost.ts';
import { chromium } from '../../../workbench/sheet/chromium.ts';
import { makeRunSheetPage, type RunSheetPage } from '../../../workbench/sheet/makeRunSheetPage.ts';
import { filledBook } from '../../filledBook.ts';

const PATIENCE = 120_000;
const require = createRequire(import.meta.url);
const WIDE = dirname(require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'));
const noFonts = mkdtempSync(join(tmpdir(), 'poursmith-no-fonts-'));
let host: Host;
let plain: RunSheetPage;
let pictured: RunSheetPage;

beforeAll(async () => {
  host = await openHost({ dist: 'dist', timeZone: 'Etc/UTC', copyOf: await filledBook() });
  plain = await makeRunSheetPage(host, '1006', 'dist');
  pictured = await makeRunSheetPage(host, '1006', 'dist', { pictures: true });
}, PATIENCE);

afterAll(async () => {
  await host.close();
  rmSync(noFonts, { recursive: true });
});

async function pagesOf(browser: Browser, html: string, format: string): Promise<number> {
  const page = await browser.newPage();
  await page.setContent(html);
  await page.evaluate(() => document.fonts.ready.then(() => {}));
  const pdf = (await page.pdf({ format })).toString('latin1');
  await page.close();
  return pdf.match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
}

test('an order of three layers has its cautions and figures, and no script', () => {
  expect(plain.runId).toBe('1006-2');
  expect(plain.html).not.toMatch(/<script/);
  for (const words of [
    '1006-2',
    'Cautions',
    'SDS',
    'Mold top must read',
    'Before heat',
    'Tear test',
  ])
    expect(plain.html).toContain(words);
});

test('every letter that the sheet prints is in the font that it carries', () => {
  const text = pictured.html.replace(/<style>[\s\S]*?<\/style>/g, '');
  // Letters of the latin files of the font, as its package says.
  expect(
    text.match(/[^\s -\u00FF\u0131\u0152\u0153\u2000-\u206F\u20AC\u2122\u2191\u2193\u2212\u2215]/g),
  ).toBeNull();
  expect(
    pictured.html.match(
      /@font-face\{font-family:Arimo;font-weight:[47]00;src:url\("?data:font\/woff2/g,
    ),
  ).toHaveLength(2);
});

describe.each([
  { fonts: 'those of the machine', folder: undefined },
  { fonts: 'none', folder: noFonts },
  { fonts: 'a wide one alone', folder: WIDE },
])('with the fonts: $fonts', ({ folder }) => {
  test(
    'an order of three layers is one page of Letter and of A4; pictures are a second',
    async () => {
      const browser = await playwright.launch(await chromium(folder));
      for (const format of ['Letter', 'A4'])
        expect(await pagesOf(browser, plain.html, format), format).toBe(1);
      expect(await pagesOf(browser, pictured.html, 'Letter')).toBe(2);
      await browser.close();
    },
    PATIENCE,
  );
});

test('an order that is not there is refused in the words of the add-on', async () => {
  await expect(makeRunSheetPage(host, '99', 'dist')).rejects.toThrow(
    'order must be listed in Orders, got "99"',
  );
});
