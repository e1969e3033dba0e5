import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { HOSTILE } from '../paper/hostile.ts';
import { bench, idle } from './bench.ts';
import { focusedId } from './parts.ts';

const { book, openPanel } = bench();

function table(page: Page, name: string) {
  return page.getByRole('table', { name });
}

async function rowsOf(page: Page, name: string): Promise<readonly (readonly string[])[]> {
  const rows = await table(page, name).locator('tr').all();
  return Promise.all(rows.map((row) => row.locator('th, td').allTextContents()));
}

const MONTHS = 'Sales, cost of goods and margin by month';

describe('the books of the panel', () => {
  test('show sales by month, excise with its cautions, and what customers owe', async () => {
    const { page, status } = await openPanel({ open: 'books' });
    expect(status).toBe('Done: Books read.');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
    const [heads, month, year] = await rowsOf(page, MONTHS);
    expect(heads).toEqual(['Month', 'Sales', 'Cost', 'Margin']);
    expect(month?.slice(0, 2)).toEqual(['2026-11', '$608.00']);
    expect(year?.slice(1)).toEqual(month?.slice(1));
    expect(await rowsOf(page, 'Excise by quarter')).toEqual([
      ['Quarter', 'Taxed on', 'Tax'],
      ['2026 Q4', '$450.00', '$45.00'],
      ['2026', '$450.00', '$45.00'],
    ]);
    const words = (await page.textContent('main')) ?? '';
    expect(words).toContain('26 USC 4161(a) (copy checked 2026-06-20)');
    expect(words).toContain('Ask a tax adviser.');
    expect(words).toContain('Not taxed, export$158.00');
    expect(words).toContain('Order 1002 is overpaid by $4.00.');
    expect(words).not.toMatch(/NaN|undefined|Infinity/);
    expect(await rowsOf(page, 'What customers owe by days since the sale')).toEqual([
      ['Days since the sale', 'Open'],
      ['0-30', '$132.25'],
      ['31-60', '$0.00'],
      ['61-90', '$0.00'],
      ['over 90', '$0.00'],
    ]);
  });

  test('save a file that holds the sales, in the form that spreadsheet programs read', async () => {
    const { page } = await openPanel({ open: 'books' });
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.click('[id="export sales"]'),
    ]);
    expect(download.suggestedFilename()).toBe('sales-2026-12-01.csv');
    const text = readFileSync(await download.path(), 'utf8');
    expect(text.startsWith('\ufeffOrder,Shipped on,Customer,')).toBe(true);
    expect(text.split('\r\n')).toHaveLength(5);
    expect(await idle(page)).toBe('Done: 3 rows saved as sales-2026-12-01.csv.');
  });

  test('update the overview', async () => {
    const { page } = await openPanel({ open: 'books' });
    await page.click('#overview');
    expect(await idle(page)).toBe('Done: The sheet Overview is up to date.');
  });

  test('close a month with the initials typed, by keyboard, and say what is kept', async () => {
    const { page, calls } = await openPanel({ open: 'books' });
    await page.fill('#who', 'AK');
    await page.keyboard.press('Tab');
    expect(await focusedId(page)).toBe('close');
    await page.keyboard.press('Enter');
    expect(await idle(page)).toBe('Done: 2026-11 is closed: Closed months keeps its figures.');
    expect(calls.at(-1)).toEqual({ verb: 'closeMonth', payload: { month: '2026-11', who: 'AK' } });
    const words = (await page.textContent('main')) ?? '';
    expect(words).toContain('Closed: 2026-11 (2026-12-01 by AK).');
    expect(words).toContain('Every month that is over and has sales is closed.');
    expect(await page.locator('#close').count()).toBe(0);
  });

  test('tell what was corrected since a month was closed', async () => {
    const answer = await book.ask('readBooks', {});
    if (answer.kind === 'refused') throw new Error('no books');
    const [month] = answer.months;
    const change = { sales: 1250, costOfGoods: 0, margin: 1250, exciseBase: 0, exciseTax: 0 };
    const since = { ...month?.since, change, orders: ['1006'] };
    const readBooks = { ...answer, months: [{ ...month, state: 'closed', since }] };
    const { page } = await openPanel({ open: 'books', answers: { readBooks } });
    expect(await page.textContent('main')).toContain(
      '2026-11: Since closing: +$12.50 sales, +$12.50 margin, order 1006 changed.',
    );
  });

  test('say how a first sale comes about while there is none', async () => {
    const nothing = {
      kind: 'ok',
      currency: 'SEK',
      day: '2026-12-01',
      months: [],
      years: [],
      quarters: [],
      exciseYears: [],
      receivable: {
        day: '2026-12-01',
        open: [],
        byAge: { '0-30': 0, '31-60': 0, '61-90': 0, 'over 90': 0 },
        total: 0,
        overpaid: [],
        held: [],
        heldTotal: 0,
      },
      stockValue: 0,
      problems: [],
      assumptions: [],
      latest: [],
      older: 0,
      isExciseOn: false,
    };
    const { page, status } = await openPanel({ open: 'books', answers: { readBooks: nothing } });
    expect(status).toBe('Done: Books read: no sale yet.');
    const words = (await page.textContent('main')) ?? '';
    expect(words).toContain(
      'No sale yet. An order is a sale on the day that stands under Shipped on',
    );
    expect(words).toContain('Excise is off in Shop. Ask a tax adviser whether that is right.');
    expect(await page.locator('#close').count()).toBe(0);
  });

  test('keep what is on show when a call fails, and say so', async () => {
    const { page } = await openPanel({ open: 'books', failing: [] });
    const shown = await rowsOf(page, MONTHS);
    const failing = await openPanel({ open: 'books', failing: ['The connection was lost'] });
    expect(failing.status).toBe(
      'Please mend: The connection was lost. Nothing you typed is lost: try again.',
    );
    await failing.page.click('#books');
    expect(await idle(failing.page)).toBe('Done: Books read.');
    expect(await rowsOf(failing.page, MONTHS)).toEqual(shown);
  });

  test('show a refusal in its own words', async () => {
    const refused = {
      kind: 'refused',
      problems: [{ field: '', text: 'The sheet Overview was not made by this add-on' }],
    };
    const { page } = await openPanel({ open: 'books', answers: { updateOverview: refused } });
    await page.click('#overview');
    expect(await idle(page)).toBe('Please mend: The sheet Overview was not made by this add-on.');
  });

  test('hold every button while a call runs', async () => {
    const { page } = await openPanel({ open: 'books' });
    await page.evaluate(() => {
      const { google } = window as unknown as { google: { script: { run: unknown } } }; // set by the test's runner
      const silent: unknown = new Proxy({}, { get: () => () => silent });
      google.script.run = silent;
    });
    await page.click('#readBooks');
    await page.waitForSelector('#view[aria-busy="true"]');
    expect(await page.textContent('#status')).toBe('Reading the books…');
    expect(await page.locator('#view button:not([disabled])').count()).toBe(0);
  });

  test('stay inside the panel and make no markup of what is typed', async () => {
    const answer = await book.ask('readBooks', {});
    if (answer.kind === 'refused') throw new Error('no books');
    const latest = HOSTILE.map((order) => ({
      ...{ order, day: '2026-11-10', sales: 123_456_789, cost: 1, margin: -1 },
      basis: 'planned',
    }));
    const [month] = answer.months;
    const large = { ...month, sales: 123_456_789, costOfGoods: 123_456_789, margin: -123_456 };
    const readBooks = { ...answer, latest, months: [large] };
    const { page } = await openPanel({ open: 'books', answers: { readBooks }, width: 280 });
    for (const summary of await page.locator('summary').all()) await summary.click();
    for (const order of HOSTILE.slice(0, -1))
      expect(await page.textContent('main')).toContain(`Order ${order}`);
    expect(await page.locator('main script, main img, main svg[onload]').count()).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(280);
  });
});
