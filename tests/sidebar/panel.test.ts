import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { bench, idle } from './bench.ts';
import { expectFit, focusedId } from './parts.ts';

const { book, openDialog, openPanel } = bench({ range: 'A8' });

/** Presses the tab key until the element has the focus; a time field takes several presses. */
async function tabTo(page: Page, id: string): Promise<void> {
  for (let presses = 0; presses < 20; presses++) {
    await page.keyboard.press('Tab');
    if ((await focusedId(page)) === id) return;
  }
  throw new Error(`${id} cannot be reached by the tab key`);
}

async function openForm(page: Page): Promise<void> {
  await page.click('#read');
  await idle(page);
  await page.click('#log');
  await page.waitForSelector('#send');
}

async function fillForm(page: Page): Promise<void> {
  for (const [key, value] of [
    ['who', 'AK'],
    ['moldTop', '214'],
    ['poured', '12'],
    ['good', '12'],
  ] as const)
    await page.fill(`#${key}`, value);
  await page.check('#tearTest');
}

describe('the bench panel', () => {
  test('shows an empty state, then the plan of the selected order, and always the caution', async () => {
    const { page } = await openPanel();
    expect(await page.textContent('#view')).toContain('Click a row on the sheet Orders');
    await page.click('#read');
    expect(await idle(page)).toBe('Done: Order 1007 read.');
    const words = (await page.textContent('#view')) ?? '';
    for (const word of [
      'Order 1007',
      'Moss over sand v1',
      `Switch on at${book.host.texts('Orders', 'AD8')[0]?.[0]}`,
      'Layer 2: back',
      'Work',
    ])
      expect(words).toContain(word);
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    expect(await page.locator('.caution').boundingBox()).toMatchObject({ y: 0 });
  });

  test.each([300, 280])(
    'fits %i px without a sideways scroll, with targets of 44 px',
    async (width) => {
      const { page } = await openPanel({ width });
      const controls = 'button, input[type="text"], input[type="time"], select, textarea, .choice';
      await page.click('#read');
      await idle(page);
      await expectFit(page, width, controls);
      await page.click('#log');
      await page.waitForSelector('#send');
      await expectFit(page, width, controls);
    },
  );

  test('shows the heat of the order on show, at its pour time', async () => {
    const { page, verbs } = await openPanel();
    await page.click('#read');
    await idle(page);
    await page.click('#heat');
    expect(await idle(page)).toBe('Done: The heat of order 1007 is open.');
    expect(verbs().filter((verb) => verb === 'showHeat')).toHaveLength(1);
    const dialog = book.shown.at(-1);
    const html = dialog?.kind === 'dialog' ? dialog.html : '';
    const encoded = /data-request="([^"]*)"/.exec(html)?.[1] ?? '';
    expect(JSON.parse(decodeURIComponent(encoded))).toEqual({ order: '1007', firstPour: '13:15' });
  });

  test('every control has a label, in every view', async () => {
    const { page } = await openPanel();
    await page.click('#read');
    await idle(page);
    const unnamed = () =>
      page
        .locator('input, select, textarea')
        .evaluateAll((all) =>
          all.filter((one) => (one as HTMLInputElement).labels?.length !== 1).map((one) => one.id),
        );
    expect(await unnamed()).toEqual([]);
    await page.click('#log');
    await page.waitForSelector('#send');
    expect(await unnamed()).toEqual([]);
  });

  test('plans again at another pour time, and only then may a new sheet be printed', async () => {
    const { page } = await openPanel();
    await page.click('#read');
    await idle(page);
    expect(await page.isDisabled('#print')).toBe(true);
    await page.click('#make');
    expect(await idle(page)).toBe('Done: Run sheet 1007-1 is on the sheet Run sheet.');
    expect(await page.isDisabled('#print')).toBe(false);
    await page.fill('#firstPour', '14:15');
    await page.dispatchEvent('#firstPour', 'change');
    await idle(page);
    expect(await page.textContent('#view')).toMatch(/Switch on at1:\d\d pm/);
    expect(await page.isDisabled('#print')).toBe(true);
  });

  test('works by keys alone: plan, form, entry', async () => {
    const { page } = await openPanel();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await idle(page);
    expect(await focusedId(page)).toBe('read');
    await tabTo(page, 'log');
    await page.keyboard.press('Enter');
    await page.waitForSelector('#send');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
    await tabTo(page, 'who');
    await page.keyboard.type('KEYS');
    expect(await page.inputValue('#who')).toBe('KEYS');
    await page.keyboard.press('Enter');
    expect(await idle(page)).toContain('Please mend:');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-invalid'))).toBe(
      'true',
    );
  });

  test('shows every message at its field and keeps what was typed', async () => {
    const { page } = await openPanel();
    await openForm(page);
    await page.fill('#moldTop', '900');
    await page.fill('#poured', '12');
    await page.fill('#good', '13');
    await page.fill('#notes', '<b>not bold</b>');
    await page.click('#send');
    expect(await idle(page)).toBe('Please mend: 4 fields of the form; each says what it needs.');
    expect(await page.locator('.error').allTextContents()).toEqual([
      'Who must be given, got nothing.',
      'Mold top must be at most 392 °F, got 900 °F.',
      'Good must be at most poured (12), got 13.',
      'Tear test must be given, got nothing.',
    ]);
    expect(await page.inputValue('#moldTop')).toBe('900');
    expect(await page.inputValue('#notes')).toBe('<b>not bold</b>');
    expect(await page.locator('b').count()).toBe(0);
  });

  test('an answer that is lost on the way costs nothing and logs once', async () => {
    const losing: string[] = [];
    const { page, verbs } = await openPanel({ losing });
    await openForm(page);
    await fillForm(page);
    losing.push('The connection was lost.');
    await page.click('#send');
    expect(await idle(page)).toBe(
      'Please mend: The connection was lost. Nothing you typed is lost: try again.',
    );
    expect(await page.inputValue('#who')).toBe('AK');
    await page.click('#back');
    await page.click('#log');
    await page.waitForSelector('#send');
    expect(await page.inputValue('#good')).toBe('12');
    await page.click('#send');
    await page.waitForSelector('#another');
    expect(await idle(page)).toContain('already, so nothing was written.');
    expect(verbs().filter((verb) => verb === 'logOutcome')).toHaveLength(2);
  });

  test('a double click sends once; another round starts with its run and initials', async () => {
    const { page, verbs } = await openPanel();
    await openForm(page);
    await fillForm(page);
    await page.dblclick('#send');
    await page.waitForSelector('#another');
    expect(verbs().filter((verb) => verb === 'logOutcome')).toHaveLength(1);
    expect(await idle(page)).toMatch(/^Done: Run 1007-1 is written to row \d+ of Pour log\.$/);
    await page.click('#another');
    await page.waitForSelector('#send');
    expect(await page.inputValue('#who')).toBe('AK');
    expect(await page.inputValue('#good')).toBe('');
    expect(await page.inputValue('#run')).toBe('1007-1');
  });
});

describe('the print dialog', () => {
  test('draws the run sheet that it was opened for, and prints nothing but that', async () => {
    await book.ask('printRunSheet', { order: '1009', runId: '1009-1' });
    const page = await openDialog();
    await page.waitForSelector('.run-sheet');
    expect(await page.textContent('#sheet')).toContain('1009-1');
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', 'yes');
    });
    await page.click('#print');
    expect(await page.getAttribute('body', 'data-printed')).toBe('yes');
    await page.emulateMedia({ media: 'print' });
    expect(await page.isVisible('.bar')).toBe(false);
    expect(await page.isVisible('.run-sheet')).toBe(true);
  });
});
