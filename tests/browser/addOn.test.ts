import type { FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import {
  FIXTURE,
  type OpenWorkbench,
  openWorkbench,
  PATIENCE,
  select,
  shown,
} from './openWorkbench.ts';

describe('the add-on on the page', { timeout: PATIENCE }, () => {
  let bench: OpenWorkbench;
  let page: Page;
  let panel: FrameLocator;

  beforeAll(async () => {
    bench = await openWorkbench({ dist: FIXTURE });
    page = await bench.window();
    panel = page.frameLocator('#sidebar iframe');
  }, PATIENCE);
  afterAll(() => bench.close());
  beforeEach(() => select(page, 'Sheet1', 'A1'));

  async function choose(label: string) {
    await page.getByRole('menuitem', { name: 'Fixture' }).click();
    await page.getByRole('menuitem', { name: label }).click();
  }
  const answer = () => panel.locator('#answer').textContent();

  test('the panel opens by itself, 300 px wide, without an origin', async () => {
    await panel.locator('#describe').waitFor();
    expect(
      await page.locator('#sidebar').evaluate((side) => side.getBoundingClientRect().width),
    ).toBe(300);
    expect(await panel.locator('body').evaluate(() => window.origin)).toBe('null');
  });

  test('a menu item runs, and its message shows', async () => {
    await choose('Fill the book');
    await expect.poll(() => shown(page, 'Sheet1', 'B4')).toBe('60');
    expect(await page.locator('.toast').first().textContent()).toContain('FilledThree rows');
  });

  test('the menu is reached and used by keyboard alone', async () => {
    await page.getByRole('menuitem', { name: 'Fixture' }).focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('End');
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    expect(await focused()).toBe('Ask');
    await page.keyboard.press('ArrowUp');
    expect(await focused()).toBe('Open dialog');
    await page.keyboard.press('Escape');
    expect(await page.getByRole('menu').count()).toBe(0);
    expect(await focused()).toBe('Fixture');
    expect(await page.evaluate(() => window.workbench?.selection())).toEqual({
      sheet: 'Sheet1',
      range: 'A1',
    });
  });

  test('a call from the panel sees the selected cell and gets its answer with the user object', async () => {
    await select(page, 'Sheet1', 'B3');
    await panel.locator('#describe').click();
    await expect.poll(answer).toBe('describe: {"greeting":"hello","cell":"B3","value":40}');
  });

  test('a failed call gives its sentence to the failure handler', async () => {
    await panel.locator('#refuse').click();
    await expect
      .poll(answer)
      .toBe('refuse failed: quantity must be greater than 0 pieces, got 0 pieces');
  });

  test('a Date in a call is refused, also inside an object', async () => {
    await panel.locator('#date').click();
    await expect.poll(answer).toBe('refused: Failed due to illegal value in property: 0.when');
  });

  test('twelve calls at once are all answered', async () => {
    await panel.locator('#many').click();
    await expect.poll(answer, { timeout: 20_000 }).toBe('0 1 2 3 4 5 6 7 8 9 10 11');
  });

  test('a dialog has the asked size and closes by Escape, from outside and inside the frame', async () => {
    await choose('Open dialog');
    const frame = page.locator('dialog iframe');
    const size = await frame.evaluate((element) => [element.clientWidth, element.clientHeight]);
    expect(size).toEqual([420, 260]);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('dialog').count()).toBe(0);
    await choose('Open dialog');
    await page.frameLocator('dialog iframe').getByText('Shown in a dialog').click();
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('dialog').count()).toBe(0);
    await choose('Open dialog');
    await page.frameLocator('dialog iframe').locator('#done').click();
    await expect.poll(() => page.locator('dialog').count()).toBe(0);
  });

  test('an alert holds the run until it is answered', async () => {
    await choose('Ask');
    await page.getByText('Write yes in C2?').waitFor();
    expect(await page.textContent('#state')).toBe('Running: Ask…');
    await page.getByRole('button', { name: 'Yes' }).click();
    await expect.poll(() => shown(page, 'Sheet1', 'C2')).toBe('yes');
  });

  test('a window that closes on a question answers it with close', async () => {
    const other = await bench.window();
    await other.getByRole('menuitem', { name: 'Fixture' }).click();
    await other.getByRole('menuitem', { name: 'Ask' }).click();
    await other.getByText('Write yes in C2?').waitFor();
    await other.close();
    await choose('Fill the book');
    await expect.poll(() => page.textContent('#state')).toBe('Kept in memory only');
  });

  test('the panel closes itself', async () => {
    await panel.locator('#close').click();
    await expect.poll(() => page.isHidden('#sidebar')).toBe(true);
  });
});
