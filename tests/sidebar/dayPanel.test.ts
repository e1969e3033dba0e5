import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { bench, idle } from './bench.ts';
import { card, focusedId, pageCount } from './parts.ts';

/** A Tuesday in Denver, seven in the morning. */
let clock = new Date('2026-12-01T14:00:00Z');

const { book, openDialog, openPanel } = bench({ now: () => clock });

async function openDay(answers: Readonly<Record<string, unknown>> = {}): Promise<Page> {
  const { page } = await openPanel({ open: 'day', answers });
  return page;
}

async function press(page: Page, id: string): Promise<string> {
  await page.click(`#${id}`);
  return idle(page);
}

describe('the pour day of the panel', { timeout: 30_000 }, () => {
  test('offers the open orders, and plans those that are chosen', async () => {
    const page = await openDay();
    expect(await page.textContent('h1')).toBe('Pour day');
    expect(await page.textContent('#view')).toMatch(/No heat without somebody beside it/);
    expect(await page.locator('.choice strong').allTextContents()).toEqual([
      '1007',
      '1008',
      '1009',
      '1010',
    ]);
    expect(await page.inputValue('#firstDay')).toBe('2026-12-01');
    await page.uncheck('#day-order-1008');
    await page.uncheck('#day-order-1010');
    expect(await press(page, 'planDay')).toBe('Done: 2 orders planned.');
    const text = (await page.textContent('#view')) ?? '';
    expect(await card(page, 'Does it fit').textContent()).toMatch(
      /It fits\. All 2 orders are packed by /,
    );
    expect(await card(page, 'Packed in this sequence').locator('li').count()).toBe(2);
    expect(await card(page, 'What limits it').textContent()).toMatch(/is the bottleneck/);
    expect(await card(page, 'What limits it').textContent()).toMatch(/One more plate /);
    expect(text).not.toMatch(/undefined|NaN|Infinity/);
    // A changed choice takes the plan of the other choice away.
    await page.check('#day-order-1010');
    expect(await card(page, 'Does it fit').count()).toBe(0);
  });

  test('draws a day at a time and lists one person’s tasks', async () => {
    const page = await openDay();
    await press(page, 'planDay');
    const svg = page.locator('figure svg');
    const title = () => svg.locator('title').textContent();
    expect(await title()).toBe('Pour day Tue Dec 1');
    await page.selectOption('#drawnDay', { label: 'Wed Dec 2' });
    expect(await title()).toBe('Pour day Wed Dec 2');
    const people = await page.locator('#person option').allTextContents();
    const [, second = ''] = people;
    await page.focus('#person');
    await page.selectOption('#person', second);
    expect(await page.locator('.tasks caption').first().textContent()).toBe(`${second}, Tue Dec 1`);
    expect(await focusedId(page)).toBe('person');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      300,
    );
  });

  test('writes the checklist; after a late morning it replans from the ticks and says who suffers', async () => {
    const page = await openDay();
    expect(await page.locator('#replan').count()).toBe(0);
    await press(page, 'planDay');
    expect(await press(page, 'writeChecklist')).toMatch(
      /^Done: \d+ lines on the sheet Checklist; ticks that were there stay\.$/,
    );
    const [, ...rows] = book.host.texts('Checklist', 'A1:J40');
    const row = rows.findIndex((cells) => cells[9]?.endsWith('lay out')) + 2;
    clock = new Date('2026-12-01T20:30:00Z');
    book.host.type('Checklist', `A${row}`, 'TRUE');
    expect(await press(page, 'replan')).toBe('Done: The rest is planned anew from the ticks.');
    const after = await card(page, 'After the ticks').textContent();
    expect(after).toMatch(/No due date suffers|is .+ late; it was/);
    // An afternoon is lost: one order has no place left in these days, and says so.
    expect(after).toMatch(/Order 10\d\d is left out: /);
    // The line of now stands in the day of now.
    expect(await page.locator('figure svg').textContent()).toContain('now');
    expect(await press(page, 'writeChecklist')).toMatch(/^Done: \d+ lines on the sheet Checklist/);
    const ticked = book.host.texts('Checklist', 'A1:J40').filter(([done]) => done === 'TRUE');
    expect(ticked).toHaveLength(1);
  });

  test('shows that it works, and what went wrong, and keeps what was chosen', async () => {
    const page = await openDay({ planDayFor: new Error('Service unavailable') });
    await page.uncheck('#day-order-1007');
    await page.click('#planDay');
    expect(await idle(page)).toBe(
      'Please mend: Service unavailable. Nothing you typed is lost: try again.',
    );
    expect(await page.isChecked('#day-order-1007')).toBe(false);
  });

  test('is busy while it plans: nothing can be pressed twice, and progress shows', async () => {
    let answer: (value: unknown) => void = () => {};
    const waiting = new Promise((resolve) => {
      answer = resolve;
    });
    const page = await openDay({ planDayFor: waiting });
    await page.click('#planDay');
    expect(await page.textContent('#status')).toBe(
      'Planning 4 orders… A full week takes some seconds.',
    );
    expect(await page.locator('progress').count()).toBe(1);
    expect(await page.isDisabled('#planDay')).toBe(true);
    answer({
      kind: 'refused',
      problems: [{ field: 'first day', text: 'first day must be given' }],
    });
    expect(await idle(page)).toBe('Please mend: First day must be given.');
    expect(await focusedId(page)).toBe('firstDay');
  });

  test('without an open order it says which would show', async () => {
    const form = { kind: 'ok', today: '2026-12-01', orders: [], isFollowed: false };
    const page = await openDay({ startDay: form });
    expect(await page.textContent('.empty')).toBe(
      'No order is open. Orders with the status accepted or planned show here.',
    );
    expect(await page.locator('#planDay').count()).toBe(0);
  });

  test('is worked with keys alone', async () => {
    const page = await openDay();
    await page.focus('#day-order-1007');
    await page.keyboard.press('Space');
    expect(await page.isChecked('#day-order-1007')).toBe(false);
    expect(await focusedId(page)).toBe('day-order-1007');
    await page.focus('#planDay');
    await page.keyboard.press('Enter');
    expect(await idle(page)).toBe('Done: 3 orders planned.');
    expect(await focusedId(page)).toBe('planDay');
  });
});

describe('the page of the pour day', { timeout: 30_000 }, () => {
  test('has the timetable with its cautions, prints it on one sideways page, and the lists behind it', async () => {
    const asked = { orders: '1007, 1009', firstDay: '2026-12-01', days: '5' };
    expect(await book.ask('showDay', asked)).toEqual({ kind: 'ok' });
    const page = await openDialog(undefined, 1100);
    await page.waitForSelector('#day svg');
    expect(await page.textContent('#day .cautions')).toMatch(/SDS, equipment manuals/);
    const pages = async () => pageCount(await page.pdf({ preferCSSPageSize: true }));
    expect(await pages()).toBe(1);
    await page.check('#lists');
    expect(await page.locator('.lists').isVisible()).toBe(true);
    expect(await pages()).toBeGreaterThan(1);
  });
});
