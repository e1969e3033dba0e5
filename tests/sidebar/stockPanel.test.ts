import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { HOSTILE } from '../paper/hostile.ts';
import { bench, idle } from './bench.ts';
import { expectFit, pageCount } from './parts.ts';

/** Row 7 is order 1006. */
const { book, openDialog, openPanel } = bench({ range: 'A7' });

async function expectNamedFit(page: Page, width: number): Promise<void> {
  await expectFit(page, width, 'button, input, summary');
  const unnamed = await page
    .locator('input')
    .evaluateAll(
      (all) => all.filter((one) => (one as HTMLInputElement).labels?.length !== 1).length,
    );
  expect(unnamed).toBe(0);
}

/** A run of order 1006 as the log form leaves it. */
const LOGGED = {
  kind: 'ok',
  logged: 'now',
  row: 62,
  run: 'R-1006',
  order: '1006',
  quantity: 90,
  good: 117,
  status: 'poured',
  changes: [],
};

/** Logs a round and goes on to the material of its run. */
async function openUse(options: Parameters<typeof openPanel>[0] = {}) {
  const answers = { logOutcome: LOGGED, ...options.answers };
  const { page, calls } = await openPanel({ ...options, answers });
  await page.click('#read');
  await idle(page);
  await page.click('#log');
  await page.waitForSelector('#send');
  await page.click('#send');
  await page.waitForSelector('#use');
  await page.click('#use');
  await idle(page);
  return { page, calls };
}

function card(page: Page, title: string) {
  return page.locator('.card', { has: page.locator(`h2:text-is("${title}")`) });
}

describe('the stock view', () => {
  test('shows value, what to buy and why, what is on hand, each with its lots', async () => {
    const { page } = await openPanel();
    await page.click('#stock');
    expect(await idle(page)).toBe('Done: Stock read.');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
    const toBuy = (await card(page, 'To buy').textContent()) ?? '';
    expect(toBuy).toContain('Plastisol soft: 2 packs of 1 gal, $124.00.');
    expect(toBuy).toMatch(
      /0\.\d+ gal short for the open orders \(0\.09 gal on hand, 0\.\d+ gal needed\), from order 1007 on, due 2026-12-08\./,
    );
    expect(toBuy).toContain('Together $');
    const medium = page.locator('.stocks > li', { hasText: 'Plastisol medium' });
    await medium.locator('summary').focus();
    await page.keyboard.press('Enter');
    expect(await medium.locator('li').allTextContents()).toEqual([
      'Lot PM-2610: 0.05 gal, $3.10 as paid',
      'Lot PM-2611: 1.98 gal, $129.69 as paid',
      'Average 64.23 USD per gal',
    ]);
    const bags = page.locator('.stocks > li', { hasText: 'Zip bag' });
    expect(await bags.textContent()).toContain(
      'Count of 2026-11-14 (row 35): 468 pieces there, 475 pieces expected, -$0.43',
    );
    await page.click('#plan');
    expect(await page.textContent('#view')).toContain('Click a row on the sheet Orders');
  });

  test.each([300, 280])(
    'fits %i px, with targets of 44 px and a label for every field',
    async (width) => {
      const { page } = await openPanel({ width });
      await page.click('#stock');
      await idle(page);
      await expectNamedFit(page, width);
    },
  );

  test('finds a lot or an order, by keyboard, and says when there is none', async () => {
    const { page } = await openPanel();
    await page.click('#stock');
    await idle(page);
    await page.fill('#lotName', 'pm-2611');
    await page.keyboard.press('Enter');
    expect(await idle(page)).toBe('Done: 2 moves found for pm-2611.');
    expect(await card(page, 'Where did a lot go?').locator('li').allTextContents()).toEqual([
      'Plastisol medium: 2 gal purchase (2026-11-09, row 30)',
      'Plastisol medium: 0.02 gal used for order 1006, run R-1006 (2026-11-24, row 40)',
    ]);
    await page.fill('#lotName', '1003');
    await page.click('#findLot');
    await idle(page);
    expect(await card(page, 'Where did a lot go?').textContent()).toContain(
      'Zip bag, 4 x 6 in, no lot: 16 pieces used (2026-11-16, row 36, lot not named: the oldest)',
    );
    await page.fill('#lotName', 'nobody');
    await page.click('#findLot');
    expect(await idle(page)).toBe('Done: 0 moves found for nobody.');
    expect(await page.textContent('#view')).toContain('No move of nobody is in Stock moves.');
    await page.fill('#lotName', ' ');
    await page.click('#findLot');
    expect(await idle(page)).toBe('Please mend: Name must be given, got nothing.');
    expect(await page.getAttribute('#lotName', 'aria-invalid')).toBe('true');
  });

  test('keeps the lot that was looked for while another view is on show', async () => {
    const { page } = await openPanel({ open: 'stock' });
    await page.fill('#lotName', 'pm-2611');
    await page.click('#findLot');
    await idle(page);
    await page.click('#plan');
    await page.click('#stock');
    await idle(page);
    expect(await page.inputValue('#lotName')).toBe('pm-2611');
    expect(await card(page, 'Where did a lot go?').locator('li').count()).toBe(2);
  });

  test('has words for an empty stock, for a lost connection, and while it waits', async () => {
    const empty = {
      kind: 'ok',
      currency: 'USD',
      total: 0,
      lines: [],
      purchases: { lines: [], total: 0, unpriced: 0 },
      uncounted: [],
      assumptions: [],
      problems: [],
      problemCount: 0,
      unposted: [],
    };
    const { page } = await openPanel({
      answers: { readStock: empty },
      failing: ['The connection was lost.'],
    });
    await page.click('#stock');
    expect(await idle(page)).toBe(
      'Please mend: The connection was lost. Nothing you typed is lost: try again.',
    );
    await page.click('#stock');
    expect(await idle(page)).toBe('Done: Stock read: nothing has moved yet.');
    expect(await page.textContent('.empty')).toContain('Type each purchase into Stock moves');
  });

  test.each(HOSTILE)('%j is shown as text and runs nothing', async (text) => {
    const line = {
      material: text,
      unit: 'gal',
      onHand: -1,
      value: -500,
      isLow: true,
      reorderLevel: 2,
      negative: { row: 3, date: text, onHand: -1 },
      lots: [{ lot: text, left: 1, value: 2 }],
    };
    const buy = {
      material: text,
      supplier: text,
      unit: 'gal',
      onHand: -1,
      needed: 2,
      free: -3,
      shortFrom: { order: text, due: text, amount: 2 },
      isLow: true,
      packSize: 1,
      packs: 4,
      noPacks: text,
    };
    const stock = {
      kind: 'ok',
      currency: 'USD',
      total: -500,
      lines: [line],
      purchases: { lines: [buy], total: 0, unpriced: 1 },
      uncounted: [{ order: text, text }],
      assumptions: [text],
      problems: [{ sheet: 'Stock moves', row: 3, heading: 'Amount', text }],
      problemCount: 1,
      unposted: [{ order: text, run: text }],
    };
    const { page } = await openPanel({ answers: { readStock: stock } });
    let alerts = 0;
    page.on('dialog', (dialog) => {
      alerts += 1;
      void dialog.dismiss();
    });
    await page.click('#stock');
    await idle(page);
    expect(await page.locator('#view script, #view img, #view style, #view b').count()).toBe(0);
    expect(await page.locator('#view svg').count()).toBe(0);
    expect(alerts).toBe(0);
  });
});

describe('taking the material of a run out of stock', () => {
  test('shows planned amounts to be overwritten, what was taken before, and fits the panel', async () => {
    const { page } = await openUse();
    expect(await page.textContent('h1')).toBe('Material of run R-1006');
    expect(await page.textContent('.warning')).toContain('Taken out before.');
    const medium = card(page, 'Plastisol medium');
    expect(await medium.textContent()).toContain(
      'Used: 0.36 gal, in rows 39, 40 of Stock moves (planned 0.3',
    );
    expect(await medium.locator('input').count()).toBe(1);
    const white = card(page, 'White');
    expect(await white.locator('input').first().inputValue()).toMatch(/^0\.017\d+$/);
    expect(await white.locator('input').first().getAttribute('aria-label')).toBe(
      'Used (fl oz), White',
    );
    await expectNamedFit(page, 300);
  });

  test('says at the field what is wrong, keeps what was typed, and sends it once mended', async () => {
    const { page, calls } = await openUse();
    const white = card(page, 'White').locator('input').first();
    await white.fill('some');
    await card(page, 'Black').locator('input').last().fill('-2');
    await page.click('#post');
    expect(await idle(page)).toBe('Please mend: 2 fields of the form; each says what it needs.');
    expect(await card(page, 'White').locator('.error').textContent()).toBe(
      'White used must be a number, got "some".',
    );
    expect(await card(page, 'Black').locator('.error').textContent()).toBe(
      'Black scrapped must be at least 0, got -2.',
    );
    expect(await white.inputValue()).toBe('some');
    expect(await white.evaluate((one) => one === document.activeElement)).toBe(true);
    await white.fill('0.02');
    await card(page, 'Black').locator('input').last().fill('');
    await page.click('#post');
    expect(await idle(page)).toMatch(
      /^Done: 8 rows of run R-1006 written to Stock moves, rows 43 to 50\.$/,
    );
    expect(await card(page, 'White').textContent()).toContain(
      'Used: 0.02 fl oz, in row 43 of Stock moves',
    );
    expect(calls.filter(({ verb }) => verb === 'postUse')).toHaveLength(2);
    // The other person's page is older: it still offers everything.
    await page.click('#post');
    expect(await idle(page)).toBe(
      'Done: Nothing was written: Stock moves holds the material of run R-1006 already.',
    );
  });

  test('a stock that goes below nothing is said at once', async () => {
    const use = {
      kind: 'ok',
      order: '1006',
      run: 'R-1006',
      poured: 8,
      good: 8,
      lines: [],
      assumptions: [],
      gaps: [],
    };
    const posted = {
      kind: 'ok',
      posted: 'now',
      rows: [60],
      use,
      negative: ['row 60: this move takes Red to -0.5 fl oz'],
    };
    const line = { material: 'Red', key: 'red', lot: '', unit: 'fl oz', planned: 1, onHand: 0.5 };
    const { page } = await openUse({
      answers: { startUse: { ...use, lines: [line] }, postUse: posted },
    });
    await page.click('#post');
    const status = await idle(page);
    expect(status).toContain('1 row of run R-1006 written to Stock moves, row 60.');
    expect(status).toContain('Stock moves, Row 60: this move takes Red to -0.5 fl oz.');
  });

  test('a run whose order has no plan says what is missing and leaves the page as it is', async () => {
    const refused = {
      kind: 'refused',
      problems: [{ field: '', text: 'in Orders, row 7: mold must be given, got nothing' }],
    };
    const { page } = await openUse({ answers: { startUse: refused } });
    expect(await page.textContent('#status')).toBe(
      'Please mend: In Orders, row 7: mold must be given, got nothing.',
    );
    expect(await page.locator('#use').count()).toBe(1);
  });
});

describe('runs that were logged and not taken out', () => {
  test('are offered in the stock view, and lead to their material and back', async () => {
    const { page } = await openPanel({
      answers: {
        readStock: {
          kind: 'ok',
          currency: 'USD',
          total: 100,
          lines: [
            { material: 'Red', unit: 'fl oz', onHand: 1, value: 100, isLow: false, lots: [] },
          ],
          purchases: { lines: [], total: 0, unpriced: 0 },
          uncounted: [],
          assumptions: [],
          problems: [],
          problemCount: 40,
          unposted: [{ order: '1006', run: 'R-1006' }],
        },
      },
    });
    await page.click('#stock');
    await idle(page);
    expect(await page.textContent('#unposted0')).toBe('Run R-1006, order 1006');
    expect(await page.textContent('#view')).toContain('Nothing: stock covers the open orders');
    await page.click('#unposted0');
    await page.waitForSelector('#post');
    expect(await page.textContent('h1')).toBe('Material of run R-1006');
    await page.click('#toStock');
    await idle(page);
    expect(await page.textContent('h1')).toBe('Stock');
  });
});

describe('the purchase list to print', () => {
  async function openList(answer: unknown): Promise<Page> {
    await book.ask('showPurchases', {});
    const page = await openDialog(async () => answer);
    await page.waitForSelector('#print:enabled');
    return page;
  }

  test('is a table for each supplier, one page of Letter or A4', async () => {
    const page = await openList(await book.ask('purchasesFor', {}));
    expect(await page.textContent('h1')).toBe('Purchase list');
    expect(await page.locator('h2').allTextContents()).toEqual(['Supplier 1', 'Supplier 4']);
    expect(await page.locator('tbody tr').first().locator('th, td').allTextContents()).toEqual([
      '☐',
      'Plastisol soft',
      '2 × 1 gal',
      '$124.00',
      expect.stringContaining('from order 1007 on, due 2026-12-08.'),
    ]);
    for (const format of ['Letter', 'A4'] as const) {
      const pdf = await page.pdf({ format, printBackground: true });
      expect(pageCount(pdf)).toBe(1);
    }
  });

  test('says that there is nothing to buy, and what was not counted', async () => {
    const page = await openList({
      kind: 'ok',
      shopName: '',
      date: '2026-12-01',
      currency: 'JPY',
      purchases: { lines: [], total: 0, unpriced: 0 },
      uncounted: [{ order: '9', text: 'mold must be given, got nothing' }],
      assumptions: [],
    });
    const words = (await page.textContent('#list')) ?? '';
    expect(words).toContain('Nothing to buy');
    expect(words).toContain('Order 9 is not counted: mold must be given, got nothing.');
  });
});
