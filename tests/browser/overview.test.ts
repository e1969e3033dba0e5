import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type OpenWorkbench, openDemoWorkbench, PATIENCE, select } from './openWorkbench.ts';

/** The week ahead is planned while the page waits. */
const SLOW = { timeout: 15_000 };

let workbench: OpenWorkbench;
let page: Page;

beforeAll(async () => {
  workbench = await openDemoWorkbench();
  page = await workbench.window();
}, PATIENCE);

afterAll(() => workbench.close());

function charts(): Promise<readonly (string | null)[]> {
  return page
    .locator('#charts svg')
    .evaluateAll((all) => all.map((chart) => chart.getAttribute('aria-label')));
}

describe('the overview in the workbench', { timeout: PATIENCE }, () => {
  test('its charts are drawn from their cells, on its sheet only, and follow them', async () => {
    expect(await page.locator('#charts').isVisible()).toBe(false);
    await page.getByRole('menuitem', { name: 'Poursmith' }).click();
    await page.getByRole('menuitem', { name: 'Update the overview' }).click();
    await expect.poll(() => charts().then((all) => all.length), SLOW).toBeGreaterThan(2);
    const drawn = await charts();
    expect(drawn).toContainEqual(
      expect.stringMatching(
        /^Sales and margin by month, USD\. 2026-11: Sales 608, Margin \d+(\.\d+)?$/,
      ),
    );
    expect(drawn).toContain('Excise by quarter, USD. 2026 Q4: Tax 45');
    const [heading, head] = await page
      .locator('#charts svg[aria-label^="Sales"]')
      .locator('text')
      .allTextContents();
    expect([heading, head]).toEqual(['Sales and margin by month, USD', 'Sales']);

    const row = workbench.host.values('Overview', 'A:A').findIndex(([cell]) => cell === '2026 Q4');
    workbench.host.type('Overview', `G${row + 1}`, '90');
    await expect.poll(charts, SLOW).toContain('Excise by quarter, USD. 2026 Q4: Tax 90');

    await select(page, 'Orders', 'A2');
    await expect.poll(() => page.locator('#charts').isVisible(), SLOW).toBe(false);
    await select(page, 'Overview', 'A1');
    await expect.poll(() => page.locator('#charts svg').count(), SLOW).toBe(drawn.length);
  });

  test('the panel saves a file from inside its frame', async () => {
    const panel = page.frameLocator('#sidebar iframe');
    await panel.getByRole('button', { name: 'Books' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      panel.getByRole('button', { name: 'Save sales as CSV' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^sales-\d{4}-\d\d-\d\d\.csv$/);
    expect(readFileSync(await download.path(), 'utf8')).toContain('1001,2026-11-07,Customer 104');
  });
});
