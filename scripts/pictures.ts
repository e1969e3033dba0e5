import { mkdir } from 'node:fs/promises';
import { type FrameLocator, type Page, chromium as playwright } from 'playwright-core';
import { openHost } from '../workbench/host/openHost.ts';
import type { TestHook } from '../workbench/page/testHook.ts';
import { fillBook } from '../workbench/server/fillBook.ts';
import { freshBuilds, PAGE } from '../workbench/server/freshBuilds.ts';
import { startServer } from '../workbench/server/startServer.ts';
import { chromium } from '../workbench/sheet/chromium.ts';
import { makeQuotePage } from '../workbench/sheet/makeQuotePage.ts';
import { makeRunSheetPage } from '../workbench/sheet/makeRunSheetPage.ts';
import { dayPictures } from './dayPictures.ts';

declare global {
  interface Window {
    workbench?: TestHook;
  }
}

/** Takes the README's pictures from the running page. */
const FOLDER = 'docs/pictures';
const quiet = () => {};

await mkdir(FOLDER, { recursive: true });
await freshBuilds(quiet);
const host = await openHost({ dist: 'dist' });
await fillBook(host, 'demo', quiet);
const book = { name: 'Demo shop', keeps: 'memory' } as const;
const server = await startServer({ host, page: PAGE, book, address: '127.0.0.1', port: 0 });
const browser = await playwright.launch(await chromium());
try {
  const page = await browser.newPage({ viewport: { width: 1400, height: 800 } });
  await page.goto(server.url);
  await ready(page);
  const panel = page.frameLocator('#sidebar iframe');
  await functions(page);
  await orderPlan(page, panel);
  await panel.getByRole('button', { name: 'Log what came out' }).click();
  await panel.getByLabel(/^Mold top/).fill('214');
  await panel.getByLabel(/^Poured/).fill('16');
  await shoot(page, 'log');
  await panel.getByRole('button', { name: 'Back to the plan' }).click();
  await money(page, panel);
  await quality(page, panel);
  await dayPictures({ page, panel, browser, shoot: shootAny });
  await runSheet();
  await quotePaper();
} finally {
  await browser.close();
  await server.close();
  await host.close();
}

async function ready(page: Page): Promise<void> {
  await page.waitForFunction(() => window.workbench?.settled() === true);
}

async function shoot(page: Page, name: string): Promise<void> {
  await ready(page);
  await page.waitForTimeout(800); // the grid draws on the next frames
  await page.screenshot({ path: `${FOLDER}/${name}.png` });
}

/** Of the workbench once it is settled, or of a page of paper. */
async function shootAny(page: Page, name: string): Promise<void> {
  if (page.url() !== 'about:blank') return shoot(page, name);
  await page.screenshot({ path: `${FOLDER}/${name}.png` });
}

/** A scratch sheet with functions over ranges, a bad row among them. */
async function functions(page: Page): Promise<void> {
  const cells: Readonly<Record<string, string>> = {
    A1: 'Good wanted',
    B1: 'Good so far',
    C1: 'Poured so far',
    D1: 'Pieces to pour',
    A2: '40',
    B2: '0',
    C2: '0',
    A3: '80',
    B3: '450',
    C3: '500',
    A4: '-5',
    B4: '10',
    C4: '12',
    A5: '150',
    B5: '88',
    C5: '90',
    D2: '=POUR_PIECES(A2:A5, B2:B5, C2:C5)',
    A7: 'Elevation (ft)',
    B7: 'Boiling point (°F)',
    A8: '0',
    A9: '2400',
    A10: '5000',
    B8: '=ARRAYFORMULA(ROUND(POUR_BOIL(A8:A10), 1))',
    A12: 'Layer (in)',
    B12: 'Earliest next (s)',
    C12: 'Latest next (s)',
    A13: '0.08',
    A14: '0.12',
    A15: '0.2',
    B13: '=ARRAYFORMULA(ROUND(POUR_NEXT_BY(A13:A15, 150), 0))',
  };
  for (const [cell, text] of Object.entries(cells)) host.type('Sheet1', cell, text);
  await host.settled();
  await page.evaluate(() => window.workbench?.select('Sheet1', 'D4'));
  await shoot(page, 'functions');
}

async function orderPlan(page: Page, panel: FrameLocator): Promise<void> {
  await page.evaluate(() => window.workbench?.select('Orders', 'A7'));
  await panel.getByRole('button', { name: 'Read the selected order' }).click();
  await panel.getByRole('heading', { name: 'Order 1006' }).waitFor();
  await shoot(page, 'plan');
  await panel.getByRole('button', { name: 'See the heat' }).click();
  await page.frameLocator('dialog iframe').locator('svg').first().waitFor();
  await shoot(page, 'heat');
  await page.keyboard.press('Escape');
  await page.evaluate(() => window.workbench?.select('Orders', 'AJ7'));
  await shoot(page, 'orders');
}

/** Price and quote of an asked order, what to buy for all open ones, and the shop's overview. */
async function money(page: Page, panel: FrameLocator): Promise<void> {
  await page.setViewportSize({ width: 1400, height: 1500 });
  await page.evaluate(() => window.workbench?.select('Orders', 'A13'));
  await panel.getByRole('button', { name: 'Read the selected order' }).click();
  await panel.getByRole('button', { name: 'Quote for order 1012' }).click();
  await panel.locator('#quotePrice table').first().waitFor();
  await shoot(page, 'quote');
  await panel.getByRole('button', { name: 'Back to the plan' }).click();
  await panel.getByRole('button', { name: 'Stock', exact: true }).click();
  await panel.getByRole('button', { name: 'Purchase list to print' }).click();
  await page.frameLocator('dialog iframe').locator('table').first().waitFor();
  await shoot(page, 'purchases');
  await page.keyboard.press('Escape');
  await panel.getByRole('button', { name: 'Back to the plan' }).click();
  await page.getByRole('menuitem', { name: 'Poursmith' }).click();
  await page.getByRole('menuitem', { name: 'Update the overview' }).click();
  await page.locator('#charts svg').first().waitFor();
  await shoot(page, 'overview');
}

async function quality(page: Page, panel: FrameLocator): Promise<void> {
  await panel.getByRole('button', { name: 'Quality', exact: true }).click();
  await panel.locator('svg').first().waitFor();
  await shoot(page, 'quality');
  await panel.getByRole('button', { name: 'Back to the plan' }).click();
  await page.evaluate((cell) => window.workbench?.select('Pour log', cell), badRound());
  await panel.getByRole('button', { name: 'What went wrong' }).click();
  await panel.getByRole('button', { name: 'Read the selected row of Pour log' }).click();
  await panel.getByText('read.').waitFor();
  await shoot(page, 'causes');
  await panel.getByRole('button', { name: 'Back to the plan' }).click();
  await page.setViewportSize({ width: 1400, height: 800 });
}

/** The round of the log with the largest share of bad pieces. */
function badRound(): string {
  const [headings = [], ...rows] = host.values('Pour log', 'A1:Z80');
  const [poured, good] = [headings.indexOf('Poured'), headings.indexOf('Good')];
  const bad = rows.map((row) => 1 - Number(row[good]) / Number(row[poured] || Number.NaN));
  const worst = Math.max(...bad.filter(Number.isFinite));
  return `A${bad.indexOf(worst) + 2}`;
}

async function runSheet(): Promise<void> {
  const { html } = await makeRunSheetPage(host, '1006', 'dist');
  await paper(html, 'run-sheet');
}

async function quotePaper(): Promise<void> {
  const { html } = await makeQuotePage(host, '1012', 'dist');
  await paper(html, 'quote-paper');
}

/** A Letter page as it prints, at 96 pixels an inch. */
async function paper(html: string, name: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 816, height: 1056 } });
  await page.setContent(html);
  await page.emulateMedia({ media: 'print' });
  await page.screenshot({ path: `${FOLDER}/${name}.png`, fullPage: true });
}
