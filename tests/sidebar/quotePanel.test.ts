import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { bench, idle } from './bench.ts';
import { expectFit, focusedId } from './parts.ts';

/** Row 13 is order 1012, which is asked for and not quoted. */
const { openPanel } = bench({ range: 'A13' });

/** Types what is asked for, and leaves the last field. */
async function typeGoods(page: Page, quantity: string): Promise<void> {
  await page.selectOption('#mold', 'Wedge tail 4.5 in');
  await page.selectOption('#pattern', 'Night glass');
  await page.fill('#quantity', quantity);
  await page.press('#quantity', 'Tab');
  await idle(page);
}

function total(page: Page): Promise<string | null> {
  return page.locator('#quoteKey .key').last().textContent();
}

describe('the quote of the panel', () => {
  test('asks for the goods, then shows the price and what it adds up from', async () => {
    const { page } = await openPanel({ open: 'quote' });
    expect(await page.textContent('h1')).toBe('Quote');
    expect(await page.textContent('#quoteKey')).toBe(
      'Choose mold and pattern and type the quantity: the price shows here.',
    );
    expect(await page.isVisible('#makeQuote')).toBe(false);
    await typeGoods(page, '50');
    expect(await page.textContent('#status')).toBe('Done: The price is worked out.');
    expect(await total(page)).toMatch(/^\$\d+\.\d\d in all$/);
    expect(await page.textContent('#quotePrice')).toContain('What it adds up from');
    expect(await page.textContent('#quoteShop')).toContain('None of this is on the printed quote.');
    await page.fill('#quantity', '60');
    expect(await page.textContent('#quoteKey')).toBe('The price of this is not worked out yet.');
  });

  test('turns the price at each key, without a call, and leaves the field alone', async () => {
    const { page, verbs } = await openPanel({ open: 'quote' });
    await typeGoods(page, '50');
    const [before, calls] = [await total(page), verbs().length];
    await page.focus('#discount');
    await page.keyboard.type('50');
    expect(await total(page)).not.toBe(before);
    expect(await focusedId(page)).toBe('discount');
    expect(verbs()).toHaveLength(calls);
  });

  test('says at the field what is wrong with the terms, until it is mended', async () => {
    const { page } = await openPanel({ open: 'quote' });
    await typeGoods(page, '50');
    await page.fill('#discount', 'much');
    await page.press('#discount', 'Tab');
    expect(await page.textContent('#discount-error')).toBe(
      'Discount must be a number (%), got "much".',
    );
    expect(await page.getAttribute('#discount', 'aria-invalid')).toBe('true');
    expect(await page.textContent('#quoteKey')).toMatch(/^No price: /);
    expect(await page.isDisabled('#makeQuote')).toBe(true);
    await page.fill('#discount', '5');
    await page.press('#discount', 'Tab');
    expect(await page.isVisible('#discount-error')).toBe(false);
    expect(await page.isDisabled('#makeQuote')).toBe(false);
  });

  test('keeps the price where it is set another way', async () => {
    const { page } = await openPanel({ open: 'quote' });
    await typeGoods(page, '50');
    const before = await total(page);
    await page.selectOption('#by', 'price of a piece');
    expect(await page.locator('label[for="aim"]').textContent()).toBe('Price of a piece (USD)');
    expect(await page.inputValue('#aim')).toMatch(/^\d+(\.\d+)?$/);
    expect(await total(page)).toBe(before);
  });

  test('brings back what was typed with its token, so that sending it again makes one quote', async () => {
    const losing: string[] = [];
    const { page, calls } = await openPanel({ open: 'quote', losing });
    await typeGoods(page, '50');
    losing.push('The connection was lost.');
    await page.click('#makeQuote');
    expect(await idle(page)).toBe(
      'Please mend: The connection was lost. Nothing you typed is lost: try again.',
    );
    await page.click('#plan');
    await page.click('#quote');
    await page.waitForSelector('#makeQuote:enabled');
    expect(await page.inputValue('#quantity')).toBe('50');
    await page.click('#makeQuote');
    expect(await idle(page)).toContain('had been made already, so nothing was written.');
    const tokens = calls.flatMap(({ verb, payload }) =>
      verb === 'makeQuote' ? [(payload as { readonly token: string }).token] : [],
    ); // as the page sent it
    expect(tokens).toHaveLength(2);
    expect(new Set(tokens).size).toBe(1);
  });

  test('makes the quote of an order, takes the yes, and fixes both', async () => {
    const { page } = await openPanel();
    await page.click('#read');
    await idle(page);
    await page.click('#quote');
    await idle(page);
    expect(await page.textContent('h1')).toBe('Quote for order 1012');
    await page.click('#makeQuote');
    const made = await idle(page);
    expect(made).toMatch(/^Done: Quote \S+ of order 1012 is made\./);
    await page.click('#accept');
    expect(await idle(page)).toBe(
      'Done: Order 1012 is accepted: price and pattern version are fixed.',
    );
    expect(await page.locator('#makeQuote, #accept').count()).toBe(0);
    expect(await page.textContent('#quoteActions')).toContain('Accepted on 2026-12-01 at $');
    expect(await page.isEnabled('#printQuote')).toBe(true);
  });

  test.each([300, 280])('fits %i px without a sideways scroll, targets of 44 px', async (width) => {
    const { page } = await openPanel({ open: 'quote', width });
    await typeGoods(page, '50');
    await expectFit(page, width, 'button, input, select, summary');
  });
});
