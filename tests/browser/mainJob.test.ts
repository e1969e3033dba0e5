import type { FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type OpenWorkbench, openDemoWorkbench, PATIENCE, settled } from './openWorkbench.ts';

/** Order 1009 and order 1004 share a mold and a pattern; 1009 is not poured yet. */
const ROW = 'A10';
const ORDER = '1009';

let workbench: OpenWorkbench;
let page: Page;
let panel: FrameLocator;

beforeAll(async () => {
  workbench = await openDemoWorkbench();
  page = await workbench.window();
  panel = page.frameLocator('#sidebar iframe');
}, PATIENCE);

afterAll(() => workbench.close());

/** A cell of *Orders* in the row of the order, by its heading. */
function cellOf(heading: string): unknown {
  const [headings = [], ...rows] = workbench.host.values('Orders', 'A1:AJ14');
  const column = headings.findIndex((text) => String(text).startsWith(heading));
  return rows.find((row) => row[0] === ORDER)?.[column];
}

function lastLogRow(): readonly unknown[] {
  const rows = workbench.host
    .values('Pour log', 'A1:AN80')
    .filter((row) => row[0] !== '' && row[0] !== null);
  return rows[rows.length - 1] ?? [];
}

describe('from an order row to a logged outcome', () => {
  test(
    'a click on an order row and one on the button show its plan, with the figures of the sheet',
    async () => {
      await page.evaluate((row) => window.workbench?.select('Orders', row), ROW);
      await panel.getByRole('button', { name: 'Read the selected order' }).click();
      await panel.getByRole('heading', { name: `Order ${ORDER}` }).waitFor();
      const plan = await panel.locator('#view').textContent();
      expect(plan).toContain(`Pour ${String(cellOf('Pieces to pour'))}`);
      expect(plan).toContain('Layer 4');
      expect(plan).toMatch(/Set to\s*\d+ °F/);
      expect(plan).toContain(String(cellOf('Plate on')));
    },
    PATIENCE,
  );

  test(
    'another pour time moves the time to switch on',
    async () => {
      const before = await panel.locator('#view').textContent();
      await panel.getByLabel('First pour at').fill('13:00');
      await panel.getByLabel('First pour at').press('Tab');
      await panel.getByText(/Switch on at\s*12:/).waitFor();
      expect(await panel.locator('#view').textContent()).not.toBe(before);
    },
    PATIENCE,
  );

  test(
    'the run sheet is made on its tab and moves the order on',
    async () => {
      await panel.getByRole('button', { name: 'Make run sheet' }).click();
      await panel.getByRole('button', { name: 'Print' }).and(panel.locator(':enabled')).waitFor();
      await settled(page);
      expect(workbench.host.values('Run sheet', 'A1:L60').flat()).toContain(`${ORDER}-1`);
      expect(cellOf('Status')).toBe('planned');
    },
    PATIENCE,
  );

  test(
    'the print dialog shows the same run with its cautions, and prints',
    async () => {
      await panel.getByRole('button', { name: 'Print' }).click();
      const sheet = page.frameLocator('dialog iframe');
      await sheet.getByText(`${ORDER}-1`).first().waitFor();
      const text = await sheet.locator('#sheet').textContent();
      expect(text).toMatch(/SDS/);
      expect(text).toMatch(/Mold top/i);
      await sheet.getByRole('button', { name: 'Print' }).and(sheet.locator(':enabled')).waitFor();
      await page.keyboard.press('Escape');
      await page.locator('dialog iframe').waitFor({ state: 'detached' });
    },
    PATIENCE,
  );

  test(
    'bad entries are all named at once and nothing typed is lost',
    async () => {
      await panel.getByRole('button', { name: 'Log what came out' }).click();
      await panel.getByLabel(/^Poured/).fill('30');
      await panel.getByLabel(/^Good/).fill('40');
      await panel.getByLabel(/^Mold top/).fill('hot');
      await panel.getByLabel(/^Notes/).fill('=IMPORTXML("http://x","//y")');
      await panel.getByRole('button', { name: 'Write to the log' }).click();
      await panel
        .getByText(/mold top must be a number/i)
        .first()
        .waitFor();
      const said = await panel.locator('#view').textContent();
      expect(said).toMatch(/good must be at most/i);
      expect(said).toMatch(/who must be given/i);
      expect(await panel.getByLabel(/^Mold top/).inputValue()).toBe('hot');
      expect(await panel.getByLabel(/^Poured/).inputValue()).toBe('30');
    },
    PATIENCE,
  );

  test(
    'a good entry is one row of the log, its text kept as text, and the next order’s pieces change',
    async () => {
      const before = Number(cellOf('Pieces to pour'));
      await panel.getByLabel(/^Mold top/).fill('214');
      await panel.getByLabel(/^Who/).fill('AB');
      await panel.getByLabel(/^Good/).fill('12');
      await panel.getByLabel(/^Peeled layer/).fill('18');
      await panel.getByLabel('peels clean').check();
      await panel.getByRole('button', { name: 'Write to the log' }).dblclick();
      await panel
        .getByText(/pieces/i)
        .first()
        .waitFor();
      await panel
        .getByText(/logged|written/i)
        .first()
        .waitFor();
      await settled(page);
      const row = lastLogRow();
      expect(row).toContain(`${ORDER}-1`);
      expect(row).toContain('=IMPORTXML("http://x","//y")');
      expect(
        workbench.host
          .values('Pour log', 'A1:A80')
          .flat()
          .filter((run) => run === `${ORDER}-1`),
      ).toHaveLength(1);
      expect(Number(cellOf('Pieces to pour'))).toBeGreaterThan(before);
    },
    PATIENCE,
  );

  test(
    'a row edited in the grid changes its computed columns and its plan',
    async () => {
      const before = Number(cellOf('Pieces to pour'));
      workbench.host.type('Orders', 'H10', '72');
      await workbench.host.settled();
      const after = Number(cellOf('Pieces to pour'));
      expect(after).toBeGreaterThan(before);
      await page.evaluate((row) => window.workbench?.select('Orders', row), ROW);
      await panel
        .getByRole('button', { name: /plan|Read the selected order/ })
        .first()
        .click();
      await panel.getByText(`Pour ${after}`).waitFor();
    },
    PATIENCE,
  );
});
