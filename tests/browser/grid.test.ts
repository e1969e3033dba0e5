import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  FIXTURE,
  type OpenWorkbench,
  openWorkbench,
  PATIENCE,
  select,
  settled,
  shown,
  type,
} from './openWorkbench.ts';

/** Middle of the second row's heading in the grid's canvas. */
const ROW_HEAD_2 = { x: 20, y: 52 };

describe('the grid', { timeout: PATIENCE }, () => {
  let bench: OpenWorkbench;
  let page: Page;

  beforeAll(async () => {
    bench = await openWorkbench({ dist: FIXTURE }, async (host) => {
      await host.call('fillBook', [], {
        window: 'test',
        selection: { sheet: 'Sheet1', range: 'A1' },
      });
    });
    page = await bench.window();
  }, PATIENCE);
  afterAll(() => bench.close());

  test('shows values, and what a sheet function spilled', async () => {
    expect(await shown(page, 'Sheet1', 'A2')).toBe('10');
    expect(
      await Promise.all(['B2', 'B3', 'B4'].map((cell) => shown(page, 'Sheet1', cell))),
    ).toEqual(['20', '40', '60']);
  });

  test('a typed number changes the computed cell, here and in the workbook', async () => {
    await type(page, 'Sheet1', 'A3', '77');
    await expect.poll(() => shown(page, 'Sheet1', 'B3')).toBe('154');
    expect(bench.host.values('Sheet1', 'A3:B3')).toEqual([[77, 154]]);
  });

  test('a typed formula is calculated by the host', async () => {
    await type(page, 'Sheet1', 'E2', '=SUM(A3:A)');
    await expect.poll(() => shown(page, 'Sheet1', 'E2')).toBe('107');
  });

  test('a typed date is a date in the workbook', async () => {
    await type(page, 'Sheet1', 'F2', '3/14/2026');
    await settled(page);
    await expect
      .poll(() => bench.host.values('Sheet1', 'F2'))
      .toEqual([[new Date('2026-03-14T00:00:00Z')]]);
  });

  test('the line above the grid says why a cell shows an error', async () => {
    await select(page, 'Sheet1', 'D2');
    await expect.poll(() => page.textContent('#cell')).toBe('D2: value must be a number, got many');
    await select(page, 'Sheet1', 'A2');
    await expect.poll(() => page.isHidden('#cell')).toBe(true);
  });

  test('an edit of a protected heading asks first, and happens only when meant', async () => {
    await type(page, 'Sheet1', 'A1', 'Baits');
    expect(await page.textContent('dialog p')).toBe('A1 is protected: Headings.');
    await page.getByRole('button', { name: 'Leave it' }).click();
    await settled(page);
    expect(bench.host.values('Sheet1', 'A1')).toEqual([['Pieces']]);
    await type(page, 'Sheet1', 'A1', 'Baits');
    await page.getByRole('button', { name: 'Change it' }).click();
    await expect.poll(() => bench.host.values('Sheet1', 'A1')).toEqual([['Baits']]);
  });

  test('undo takes a typed value back everywhere', async () => {
    await type(page, 'Sheet1', 'A4', '5');
    await expect.poll(() => shown(page, 'Sheet1', 'B4')).toBe('10');
    await page.keyboard.press('Control+z');
    await expect.poll(() => shown(page, 'Sheet1', 'B4')).toBe('60');
    expect(bench.host.values('Sheet1', 'A4')).toEqual([[30]]);
  });

  test('an inserted row moves formulas with their cells', async () => {
    const canvas = page.locator('canvas[id^="univer-sheet-main-canvas"]');
    await canvas.click({ button: 'right', position: ROW_HEAD_2 });
    // Its middle is the field for how many.
    await page.getByText('rows above').click({ position: { x: 5, y: 8 } });
    await settled(page);
    await expect.poll(() => bench.host.values('Sheet1', 'A3')).toEqual([[10]]);
    await expect.poll(() => shown(page, 'Sheet1', 'E3')).toBe('107');
  });
});
