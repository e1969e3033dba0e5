import type { FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type OpenWorkbench, openDemoWorkbench, PATIENCE, settled, type } from './openWorkbench.ts';

let workbench: OpenWorkbench;
let page: Page;
let panel: FrameLocator;

beforeAll(async () => {
  workbench = await openDemoWorkbench();
  page = await workbench.window();
  panel = page.frameLocator('#sidebar iframe');
}, PATIENCE);

afterAll(() => workbench.close());

describe('a pour day in the workbench', { timeout: PATIENCE }, () => {
  test('two orders are planned and their lines stand on the checklist', async () => {
    await panel.getByRole('button', { name: 'Pour day' }).click();
    await panel.getByRole('button', { name: 'Choose none' }).click();
    await panel.getByRole('checkbox', { name: /^1007/ }).check();
    await panel.getByRole('checkbox', { name: /^1009/ }).check();
    await panel.getByRole('button', { name: 'Plan the days' }).click();
    await panel.getByText('2 orders planned.').waitFor();
    await panel.getByRole('img', { name: /^Pour day / }).waitFor();
    await panel.getByRole('button', { name: 'Write the checklist' }).click();
    await panel.getByText(/lines on the sheet Checklist/).waitFor();
    await settled(page);
    const lines = workbench.host.values('Checklist', 'J:J').flat();
    expect(lines).toEqual(expect.arrayContaining(['1007 lay out', '1009 pack']));
  });

  test('a tick typed in the grid gets its time, and a second window sees it', async () => {
    // The keys were the panel's until now.
    await page.mouse.click(400, 400);
    await type(page, 'Checklist', 'A2', 'TRUE');
    await expect.poll(() => workbench.host.values('Checklist', 'F2')[0]?.[0]).toBeInstanceOf(Date);
    const other = await workbench.window();
    await expect
      .poll(() => other.evaluate(() => window.workbench?.value('Checklist', 'A2')))
      .toMatch(/^(1|TRUE)$/i);
    await other.close();
  });

  test('the rest is replanned from the tick, and the day opens to print', async () => {
    await panel.getByRole('button', { name: 'Replan from the ticks' }).click();
    await panel.getByRole('heading', { name: 'After the ticks' }).waitFor();
    await panel.getByRole('button', { name: 'Open to print' }).click();
    const dialog = page.frameLocator('dialog iframe');
    await dialog.getByRole('img', { name: /^Pour days? / }).waitFor();
    await dialog.getByRole('button', { name: 'Print' }).and(dialog.locator(':enabled')).waitFor();
    expect(await dialog.locator('.cautions').textContent()).toMatch(/SDS/);
    await page.keyboard.press('Escape');
    await page.locator('dialog iframe').waitFor({ state: 'detached' });
  });
});
