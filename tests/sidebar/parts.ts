import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** The card under a heading that holds the title. */
export function card(page: Page, title: string) {
  return page.locator('.card', { has: page.locator('h2', { hasText: title }) });
}

/** The id of the element that has the focus. */
export function focusedId(page: Page): Promise<string | undefined> {
  return page.evaluate(() => document.activeElement?.id);
}

/** Nothing is wider than the panel, and a glove hits every control. */
export async function expectFit(page: Page, width: number, controls: string): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
    width,
  );
  const heights = await page
    .locator(controls)
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
}

/** How many pages a PDF has. */
export function pageCount(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}
