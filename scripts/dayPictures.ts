import type { Browser, FrameLocator, Page } from 'playwright-core';

/** A phone held upright, with the row numbers that a phone's app does not have [px]. */
const PHONE = { width: 478, height: 900 };

/** The first day of the demo shop's week. */
const MONDAY = '2026-11-30';

interface DayStage {
  readonly page: Page;
  readonly panel: FrameLocator;
  readonly browser: Browser;
  /** Takes a picture of a page once everything on it is drawn. */
  readonly shoot: (page: Page, name: string) => Promise<void>;
}

/** The pour day: planned in the panel, a timer, its page to print, and the checklist as a phone shows it. */
export async function dayPictures({ page, panel, browser, shoot }: DayStage): Promise<void> {
  await page.setViewportSize({ width: 1400, height: 1100 });
  await page.evaluate(() => window.workbench?.select('Orders', 'A10'));
  await panel.getByRole('button', { name: 'Read the selected order' }).click();
  await panel.getByRole('heading', { name: 'Order 1009' }).waitFor();
  await panel.getByRole('button', { name: 'Timers' }).click();
  await panel.getByRole('button', { name: /^First cavity of belly/ }).click();
  await panel.locator('.timer').waitFor();
  await shoot(page, 'timer');
  await panel.getByRole('button', { name: /^Stop/ }).click();
  await panel.getByText('No timer runs.').waitFor();
  await panel.getByRole('button', { name: 'Back to the plan' }).click();

  await panel.getByRole('button', { name: 'Pour day' }).click();
  await panel.getByLabel('First day').fill(MONDAY);
  await panel.getByLabel('First day').press('Tab');
  await panel.getByRole('button', { name: 'Plan the days' }).click();
  await panel.getByText('orders planned.').waitFor();
  await panel.getByRole('button', { name: 'Write the checklist' }).click();
  await panel.getByText('on the sheet Checklist').waitFor();
  await page.evaluate(() => window.workbench?.select('Checklist', 'A2'));
  await panel.getByRole('heading', { name: 'Does it fit' }).scrollIntoViewIfNeeded();
  await shoot(page, 'pour-day');
  await panel.getByRole('button', { name: 'Open to print' }).click();
  const dialog = page.frameLocator('dialog iframe');
  await dialog.locator('#day svg').waitFor();
  await paper(browser, await dialog.locator('html').evaluate(({ outerHTML }) => outerHTML), shoot);
  await page.keyboard.press('Escape');
  await phone(page, shoot);
}

/** A sideways Letter page as it prints, without its margins, at 96 pixels an inch. */
async function paper(browser: Browser, html: string, shoot: DayStage['shoot']): Promise<void> {
  const sheet = await browser.newPage({ viewport: { width: 988, height: 748 } });
  await sheet.setContent(html.replace(/<script[\s\S]*?<\/script>/g, ''));
  await sheet.emulateMedia({ media: 'print' });
  await shoot(sheet, 'pour-day-paper');
  await sheet.close();
}

/** The checklist without the panel, as wide as a phone; the first ticks are made. */
async function phone(page: Page, shoot: DayStage['shoot']): Promise<void> {
  await page.locator('#sidebar').getByRole('button', { name: 'Close' }).click();
  await page.setViewportSize(PHONE);
  await page.mouse.click(200, 500);
  for (const cell of ['A2', 'A3']) {
    await page.evaluate((at) => window.workbench?.select('Checklist', at), cell);
    await page.keyboard.type('TRUE');
    await page.keyboard.press('Enter');
  }
  await page.evaluate(() => window.workbench?.select('Checklist', 'A4'));
  await shoot(page, 'checklist');
  await page.setViewportSize({ width: 1400, height: 800 });
}
