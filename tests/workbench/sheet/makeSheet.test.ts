import { chromium as playwright } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { chromium } from '../../../scripts/chromium.ts';
import type { Host } from '../../../workbench/host/Host.ts';
import { openHost } from '../../../workbench/host/openHost.ts';
import { fillBook } from '../../../workbench/server/fillBook.ts';
import { makeSheet } from '../../../workbench/sheet/makeSheet.ts';

const PATIENCE = 120_000;
let host: Host;

beforeAll(async () => {
  host = await openHost({ dist: 'dist', timeZone: 'Etc/UTC' });
  await fillBook(host, 'demo', () => {});
}, PATIENCE);

afterAll(() => host.close());

test(
  'an order of three layers is one page of Letter and of A4, with its cautions and figures; pictures are a second',
  async () => {
    const { runId, html } = await makeSheet(host, '1006', 'dist');
    expect(runId).toBe('1006-2');
    expect(html).not.toMatch(/<script/);
    const browser = await playwright.launch(await chromium());
    const page = await browser.newPage();
    await page.setContent(html);
    const text = String(await page.locator('#sheet').textContent());
    for (const words of [
      '1006-2',
      'Cautions',
      'SDS',
      'Mold top must read',
      'Before heat',
      'Tear test',
    ])
      expect(text).toContain(words);
    for (const format of ['Letter', 'A4']) {
      const pdf = (await page.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page[^s]/g), format).toHaveLength(1);
    }
    const pictured = await makeSheet(host, '1006', 'dist', { pictures: true });
    await page.setContent(pictured.html);
    const pdf = (await page.pdf({ format: 'Letter' })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page[^s]/g)).toHaveLength(2);
    await browser.close();
  },
  PATIENCE,
);

test('an order that is not there is refused in the words of the add-on', async () => {
  await expect(makeSheet(host, '99', 'dist')).rejects.toThrow(
    'order must be listed in Orders, got "99"',
  );
});
