import { type Browser, chromium as playwright } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Host } from '../../../workbench/host/Host.ts';
import { openHost } from '../../../workbench/host/openHost.ts';
import { chromium } from '../../../workbench/sheet/chromium.ts';
import { makeQuotePage } from '../../../workbench/sheet/makeQuotePage.ts';
import { filledBook } from '../../filledBook.ts';

const PATIENCE = 120_000;
let host: Host;
let browser: Browser;

beforeAll(async () => {
  host = await openHost({ dist: 'dist', timeZone: 'Etc/UTC', copyOf: await filledBook() });
  browser = await playwright.launch(await chromium());
}, PATIENCE);

afterAll(async () => {
  await browser.close();
  await host.close();
});

/** Types a setting of the sheet Shop. */
function set(label: string, value: string): void {
  let row = 1;
  while (host.values('Shop', `A${row}`)[0]?.[0] !== label) row++;
  host.type('Shop', `B${row}`, value);
}

test(
  'the longest quote that can be made is one page of Letter and of A4',
  async () => {
    set('Break quantities', '10, 20, 25, 30, 40, 60, 75, 100, 150, 200, 250, 500');
    set('Quote terms', 'Paid before it is shipped. '.repeat(26).slice(0, 700));
    set('Excise is', 'added to the price');
    host.type('Orders', 'Q13', '0.05');
    await host.settled();
    const { quote, html } = await makeQuotePage(host, '1012', 'dist');
    expect(html).not.toMatch(/<script/);
    const page = await browser.newPage();
    await page.setContent(html);
    const text = String(await page.locator('#quote').textContent());
    for (const words of [
      quote,
      'Night glass, version 1: ',
      'Rush charge 25 %',
      'Discount 5 %',
      'Federal excise tax',
      'Sales tax 6 %',
      'Deposit, 50 % when you accept',
      'Ask a tax adviser.',
    ])
      expect(text).toContain(words);
    for (const format of ['Letter', 'A4']) {
      const pdf = (await page.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page[^s]/g), format).toHaveLength(1);
    }
  },
  PATIENCE,
);

test('an order that has a quote is not quoted again', async () => {
  const first = await makeQuotePage(host, '1012', 'dist');
  const again = await makeQuotePage(host, '1012', 'dist');
  expect(again).toEqual(first);
});

test('an order that cannot be quoted is refused in the words of the add-on', async () => {
  await expect(makeQuotePage(host, '1011', 'dist')).rejects.toThrow(
    'Order 1011 is canceled: set its status to asked to quote it.',
  );
});
