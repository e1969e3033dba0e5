import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { bench, idle } from './bench.ts';
import { focusedId } from './parts.ts';

const { book, openPanel } = bench({ range: 'A10' });

/** Where the clock of the book stands [ms]. */
const NOW = Date.UTC(2026, 11, 1, 20);
/** Order 1009: two molds of four layers, not poured yet. */
const ORDER = '1009';

/** A panel whose computer shows the book's time, so many seconds later. */
async function openAt(seconds: number): Promise<Page> {
  const { page } = await openPanel({ timers: 'asked' });
  await turnTo(page, seconds);
  return page;
}

async function turnTo(page: Page, seconds: number): Promise<void> {
  await page.clock.setFixedTime(NOW + seconds * 1000);
}

async function openTimers(page: Page): Promise<void> {
  await page.click('#read');
  await idle(page);
  await page.click('#openTimers');
  await idle(page);
}

/** What the cues of a layer's timer are, by the add-on itself. */
async function layerCues(): Promise<readonly { readonly kind: string; readonly after: number }[]> {
  const answer = await book.ask('timersFor', { order: ORDER });
  if (answer.kind !== 'ok') throw new Error('the order has timers');
  return answer.choices.find(({ key }) => key === 'layer 1')?.cues ?? [];
}

/** Nothing of one test runs on in the next. */
afterEach(async () => {
  const answer = await book.ask('timersFor', {});
  if (answer.kind !== 'ok') throw new Error('the timers can be read');
  for (const { id } of answer.timers) await book.ask('stopTimer', { id });
});

describe('timers of the panel', { timeout: 20_000 }, () => {
  test('from the first press to too late: seconds, words and the strip above every view', async () => {
    const [earliest, latest] = await layerCues();
    if (earliest === undefined) throw new Error('the second layer has an earliest time');
    const page = await openAt(0);
    expect(await page.locator('#timers').isHidden()).toBe(true);
    await openTimers(page);
    expect(await page.textContent('#view')).toMatch(/A timer never replaces the probe/);
    expect(await page.textContent('#view')).toContain('No timer runs.');
    await page.click('#start-layer-1');
    await idle(page);
    const card = page.locator('.timer');
    await expect.poll(() => card.getAttribute('data-phase')).toBe('waiting');
    await expect
      .poll(() => page.textContent('#timers .say'))
      .toBe(`${ORDER}: Too early: the layer below is still soft`);

    await turnTo(page, earliest.after);
    await expect.poll(() => card.getAttribute('data-phase')).toBe('go');
    expect(await card.locator('.say').textContent()).toMatch(
      /^Pour .+ as soon as the skin is firm$/,
    );
    if (latest !== undefined) {
      await turnTo(page, latest.after - 10);
      await expect.poll(() => card.locator('.count').textContent()).toBe('0:10 left, last call');
      await turnTo(page, latest.after + 5);
      await expect.poll(() => card.locator('.count').textContent()).toBe('0:05 over');
    }
    // The strip stays when another view is on show.
    await page.click('#plan');
    await expect.poll(() => page.locator('#timers').isVisible()).toBe(true);
    await page.click('#openTimers');
    await idle(page);
    await page.locator('.timer button').click();
    await idle(page);
    expect(await page.locator('.timer').count()).toBe(0);
    await expect.poll(() => page.locator('#timers').isHidden()).toBe(true);
  });

  test.each([
    { key: 'layer 1', cue: 'earliest', says: 'Too early', tones: [880, 1175] },
    { key: 'cup', cue: 'too cool', says: 'Hot enough', tones: [330, 247] },
  ])('$key is heard when its moment comes', async ({ key, cue, says, tones }) => {
    const answer = await book.ask('timersFor', { order: ORDER });
    if (answer.kind !== 'ok') throw new Error('the order has timers');
    const { cues = [] } = answer.choices.find((choice) => choice.key === key) ?? {};
    const page = await openAt(0);
    await page.evaluate(() => {
      const heard: number[] = [];
      Object.assign(window, { heard });
      const { start } = OscillatorNode.prototype;
      OscillatorNode.prototype.start = function (when) {
        heard.push(this.frequency.value);
        start.call(this, when);
      };
    });
    const heard = () => page.evaluate(() => (window as unknown as { heard: number[] }).heard);
    await openTimers(page);
    await page.click(`#start-${key.replace(' ', '-')}`);
    await idle(page);
    // The strip is drawn by the beat that also sounds.
    await expect.poll(() => page.textContent('#timers .say')).toContain(says);
    expect(await heard()).toEqual([]);
    await turnTo(page, cues.find(({ kind }) => kind === cue)?.after ?? 0);
    await expect.poll(heard).toEqual(tones);
  });

  test('a timer outlives the panel, and another panel shows the same', async () => {
    const first = await openAt(0);
    await openTimers(first);
    await first.click('#start-plate');
    await idle(first);
    await first.close();

    const second = await openAt(60);
    await expect
      .poll(() => second.textContent('#timers .say'))
      .toBe(`${ORDER}: Heat is never left alone`);
    await openTimers(second);
    expect(await second.locator('.timer').count()).toBe(1);
    const before = await second.locator('.timer .count').textContent();
    await turnTo(second, 61);
    await expect.poll(() => second.locator('.timer .count').textContent()).not.toBe(before);
  });

  test('is worked with keys alone, and names what each Stop stops', async () => {
    const page = await openAt(0);
    await openTimers(page);
    await page.focus('#start-cup');
    await page.keyboard.press('Enter');
    await idle(page);
    expect(await focusedId(page)).toBe('start-cup');
    const stop = page.getByRole('button', { name: `Stop: ${ORDER}, Cup cooked, pouring begins` });
    await stop.focus();
    await page.keyboard.press('Enter');
    await idle(page);
    expect(await page.locator('.timer').count()).toBe(0);
  });

  test('a computer whose clock is wrong is told so instead of timing a layer wrong', async () => {
    const page = await openAt(600);
    await openTimers(page);
    await page.click('#start-cup');
    await idle(page);
    expect(await page.textContent('#status')).toBe(
      'Please mend: The clock of this computer is 10 min ahead: set it right, then start the timer again.',
    );
  });
});

describe('the verbs of the timers', () => {
  const press = (token: string, more: object = {}) =>
    book.ask('startTimer', { order: ORDER, key: 'cup', at: String(NOW), token, ...more });

  test('one press starts one timer however often it is sent; who stops it twice stops it once', async () => {
    await press('t-1');
    const again = await press('t-1');
    expect(again).toMatchObject({
      kind: 'ok',
      timers: [{ id: 't-1', order: ORDER, startedAt: NOW }],
    });
    await book.ask('stopTimer', { id: 't-1' });
    expect(await book.ask('stopTimer', { id: 't-1' })).toEqual({ kind: 'ok', timers: [] });
  });

  test.each([
    [{ at: '12:00' }, 'at', 'at must be a count of milliseconds, got "12:00"'],
    [{ key: 'oven' }, 'key', `order ${ORDER} has no timer "oven"; open the timers anew`],
    [{ key: '' }, 'key', 'key must be given, got nothing'],
  ])('refuses %j', async (more, field, text) => {
    expect(await press('t-2', more)).toEqual({ kind: 'refused', problems: [{ field, text }] });
    expect(await book.ask('timersFor', {})).toMatchObject({ timers: [] });
  });

  test('sixteen run at once, not one more', { timeout: 20_000 }, async () => {
    for (let index = 0; index < 16; index += 1) await press(`many-${index}`);
    expect(await press('one more')).toEqual({
      kind: 'refused',
      problems: [{ field: '', text: '16 timers run already: stop one that is done first.' }],
    });
    for (let index = 0; index < 16; index += 1)
      await book.ask('stopTimer', { id: `many-${index}` });
  });
});
