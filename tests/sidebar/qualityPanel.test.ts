import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { QualityAnswer } from '../../shared/commands/qualityCommands.ts';
import { HOSTILE } from '../paper/hostile.ts';
import { bench, idle } from './bench.ts';
import { expectFit, focusedId } from './parts.ts';

const { book, openBuilt, openPanel } = bench();

const HEADINGS = '#view h2';

/** A shop without a round, as the add-on answers for it. */
const EMPTY: QualityAnswer = {
  ...{ kind: 'ok', shopName: '', system: 'US', day: '2026-12-01', asked: { points: 'rounds' } },
  ...{ molds: [], patterns: [], rounds: 0, worst: [], pictures: [] },
  weeks: [{ from: '2026-11-30', rounds: 0, poured: 0, good: 0 }],
  missing: ['The control chart of bad pieces needs two rounds.'],
};

describe('qualityFor', () => {
  test('takes all, a mold, a pattern, and rounds or runs; blank is all', async () => {
    const all = await book.ask('qualityFor', { mold: '', points: '' });
    expect(all).toMatchObject({ kind: 'ok', asked: { points: 'rounds' }, rounds: 60 });
    const mold = await book.ask('qualityFor', { mold: 'Wedge tail 4.5 in', points: 'runs' });
    expect(mold).toMatchObject({ rounds: 11, asked: { points: 'runs' } });
    const none = { mold: 'Wedge tail 4.5 in', pattern: 'Slate over pearl' };
    expect(await book.ask('qualityFor', none)).toMatchObject({ kind: 'ok', rounds: 0 });
  });

  test.each([
    { payload: { points: 'days' }, text: 'points must be one of rounds, runs, got "days"' },
    { payload: { more: '1' }, text: 'more must be a field that this command knows, got "1"' },
  ])('refuses in one sentence: $text', async ({ payload, text }) => {
    const answer = await book.ask('qualityFor', payload);
    expect(answer).toMatchObject({ kind: 'refused', problems: [{ text }] });
  });

  test('showQuality opens the page for what is on show', async () => {
    expect(await book.ask('showQuality', { mold: 'Thin worm 6 in' })).toEqual({ kind: 'ok' });
    expect(book.shown[book.shown.length - 1]).toMatchObject({ title: 'Quality' });
  });
});

describe('the quality of the panel', () => {
  test('opens by keys with the heading in focus: week, signals, worst, weeks, charts in words', async () => {
    const { page, status } = await openPanel({ open: 'quality' });
    expect(status).toBe('Done: Log read: 60 rounds.');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
    expect(await page.locator(HEADINGS).allTextContents()).toEqual([
      ...['This week', 'Signals', 'Worst of all', 'Week by week'],
      ...['Bad pieces', 'What was wrong', 'Yield against mold top'],
      'Piece weight, Round stick 5 in',
    ]);
    const words = (await page.textContent('#view')) ?? '';
    for (const part of [
      'Nothing logged this week',
      'Week of 2026-11-23: 91 % good, 116 of 128 pieces in 8 rounds; the yield lies between 84 % and 95 %.',
      'Bad pieces: R-1002 round 1: more bad than usual, above the limit',
      'Weight: R-1001 round 5: jumped from the piece before',
      'Mold Wedge tail 4.5 in: 109 of 132 pieces good in 11 rounds, 83 % (75 % to 88 %); all others 89 %.',
      'Over 4 weeks the yield neither rises nor falls by more than luck explains.',
    ])
      expect(words).toContain(part);
    expect(words).not.toMatch(/NaN|undefined|Infinity/);
    expect(await page.locator('#view tbody tr').allTextContents()).toEqual([
      '2026-11-3000–',
      '2026-11-2312811691 %',
      '2026-11-16645383 %',
      '2026-11-0927224189 %',
      '2026-11-0230827088 %',
    ]);
    // each picture is drawn, and said in words below it
    expect(await page.locator('#view figure svg').count()).toBe(4);
    expect(await page.locator('#view details p').allTextContents()).not.toContain('');
  });

  test('the newest signal of a chart stands first', async () => {
    const { page } = await openPanel({ open: 'quality' });
    const items = await page.locator('#view section.card ul li').allTextContents();
    const runs = items
      .filter((text) => text.startsWith('Bad pieces: R-'))
      .map((text) => text.slice(12, 18));
    expect(runs.length).toBeGreaterThan(2);
    expect(runs).toEqual([...runs].sort().reverse());
  });

  test('by keys alone a mold, a pattern and runs are chosen, and the choice keeps the focus', async () => {
    const { page } = await openPanel({ open: 'quality' });
    for (const id of ['look-mold', 'look-pattern', 'look-points']) {
      await page.keyboard.press('Tab');
      expect(await focusedId(page)).toBe(id);
    }
    await page.focus('#look-mold');
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => page.inputValue('#look-mold')).toBe('Round stick 5 in');
    expect(await idle(page)).toBe('Done: Log read: 19 rounds.');
    expect(await focusedId(page)).toBe('look-mold');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => page.inputValue('#look-points')).toBe('runs');
    expect(await idle(page)).toBe('Done: Log read: 19 rounds.');
    expect(await focusedId(page)).toBe('look-points');
    expect(await page.inputValue('#look-mold')).toBe('Round stick 5 in');
    expect(await page.locator(HEADINGS).nth(4).textContent()).toBe('Bad pieces, Round stick 5 in');
    // what was asked for stays when the log is read again
    await page.focus('#readQuality');
    await page.keyboard.press('Enter');
    expect(await idle(page)).toBe('Done: Log read: 19 rounds.');
    expect(await focusedId(page)).toBe('readQuality');
  });

  test('a mold and a pattern without a round in common say what is missing, and the worst stay', async () => {
    const { page } = await openPanel({ open: 'quality' });
    await page.selectOption('#look-mold', 'Wedge tail 4.5 in');
    await idle(page);
    await page.selectOption('#look-pattern', 'Slate over pearl');
    expect(await idle(page)).toBe('Done: Log read: 0 rounds.');
    const words = (await page.textContent('#view')) ?? '';
    for (const part of [
      'Nothing logged',
      'No chart yet: it needs two rounds or two weighed pieces.',
      'Mold Wedge tail 4.5 in: 109 of 132',
      'No bad piece is logged: no defects to rank.',
    ])
      expect(words).toContain(part);
    expect(await page.locator('#view figure').count()).toBe(0);
  });

  test('an empty log says how to come by a yield, offers nothing to choose and nothing to print', async () => {
    const { page, status } = await openPanel({ open: 'quality', answers: { qualityFor: EMPTY } });
    expect(status).toBe('Done: Log read: no round is logged yet.');
    expect(await page.textContent('#view .empty')).toBe(
      'No round is logged yet. After a run press Log what came out; a yield shows from the first round on, a control chart needs two.',
    );
    expect(await page.locator('#printQuality, #view select').count()).toBe(0);
    await page.focus('#plan');
    await page.keyboard.press('Enter');
    await idle(page);
    expect(await page.locator('#quality').count()).toBe(1);
  });

  test('one round has its week and no chart', async () => {
    const interval = { low: 0.596, high: 0.982 };
    const weeks = [{ from: '2026-11-30', rounds: 1, poured: 10, good: 9, interval }];
    const one = { ...EMPTY, molds: ['Stick'], patterns: ['Line'], rounds: 1, weeks };
    const { page, status } = await openPanel({ open: 'quality', answers: { qualityFor: one } });
    expect(status).toBe('Done: Log read: 1 round.');
    const words = (await page.textContent('#view')) ?? '';
    for (const part of [
      '90 % good',
      '9 of 10 pieces in 1 round; the yield lies between 60 % and 98 %.',
      'No mold, pattern or layer count of the last 8 weeks comes out worse than the others for sure.',
      'A trend needs three weeks with rounds, with good and bad pieces among them.',
      'The control chart of bad pieces needs two rounds.',
    ])
      expect(words).toContain(part);
  });

  test.each(HOSTILE)('the name %j is drawn and asked for as text', async (name) => {
    const signal = { rule: 'beyond its limit', text: name, from: 1, to: 1 };
    const points = [0.1, 0.9].map((value) => ({ label: name, value, lower: 0, upper: 0.5 }));
    const group = { rounds: 2, poured: 20, good: 10, low: 0.3, high: 0.7, others: 0.9 };
    const hostile: QualityAnswer = {
      ...{ ...EMPTY, molds: [name], patterns: [name], rounds: 2, missing: [name] },
      worst: [{ kind: 'mold', name, ...group }],
      pictures: [
        {
          ...{ kind: 'share-chart', title: name, system: 'US', each: 'round', center: 0.5 },
          ...{ points, signals: [signal], isProvisional: true },
        },
      ],
    };
    const { page } = await openPanel({ open: 'quality', answers: { qualityFor: hostile } });
    // an option without a value of its own would lose the blanks of its text
    expect(await page.locator('#look-mold option').last().getAttribute('value')).toBe(name);
    expect(await page.locator('#view ol strong').allTextContents()).toEqual([`Mold ${name}: `]);
    expect(await page.locator(HEADINGS).last().textContent()).toBe(name);
    expect(await page.textContent('#view ul li')).toContain(name);
    expect(await page.textContent('#view .empty')).toBe(name);
    expect(await page.locator('#view img, #view script, #view svg svg, #view b').count()).toBe(0);
  });

  test('a call that fails and one that is refused leave the charts and the choice on show', async () => {
    const failing: string[] = [];
    const { page } = await openPanel({ open: 'quality', failing });
    await page.selectOption('#look-mold', 'Thin worm 6 in');
    await idle(page);
    const before = await page.locator(HEADINGS).allTextContents();
    failing.push('The connection was lost.');
    await page.selectOption('#look-mold', '');
    expect(await idle(page)).toBe(
      'Please mend: The connection was lost. Nothing you typed is lost: try again.',
    );
    expect(await page.locator(HEADINGS).allTextContents()).toEqual(before);
    // the choice shows what the charts are of, not what was not read
    expect(await page.inputValue('#look-mold')).toBe('Thin worm 6 in');
    await page.evaluate(() => {
      const options = [...document.querySelectorAll('#look-points option')];
      options[1]?.setAttribute('value', 'days');
    });
    await page.selectOption('#look-points', 'days');
    expect(await idle(page)).toBe('Please mend: Points must be one of rounds, runs, got "days".');
    expect(await page.inputValue('#look-points')).toBe('rounds');
    await page.selectOption('#look-mold', '');
    expect(await idle(page)).toBe('Done: Log read: 60 rounds.');
  });

  test('Open to print asks for the page of what is on show', async () => {
    const { page } = await openPanel({ open: 'quality' });
    await page.selectOption('#look-mold', 'Thin worm 6 in');
    await idle(page);
    await page.focus('#printQuality');
    await page.keyboard.press('Enter');
    expect(await idle(page)).toBe('Done: The page of the quality is open.');
    const request = book.shown[book.shown.length - 1];
    const data = /data-request="([^"]*)"/.exec(request && 'html' in request ? request.html : '');
    expect(JSON.parse(decodeURIComponent(data?.[1] ?? ''))).toEqual({
      mold: 'Thin worm 6 in',
      points: 'rounds',
    });
  });

  test.each([300, 280])('fits %i px without a sideways scroll, targets of 44 px', async (width) => {
    const { page } = await openPanel({ open: 'quality', width });
    await expectFit(page, width, 'button, select, summary');
  });
});

/** The page to print, opened for a request, with its calls going to `answering`. */
async function openPage(request: unknown, answering?: () => Promise<unknown>): Promise<Page> {
  const page = await openBuilt('Quality.html', { width: 860, request }, answering);
  await page.waitForSelector('main:not([aria-busy])', { state: 'attached' }); // a refusal leaves it blank;
  return page;
}

describe('the page to print', () => {
  test('holds what was asked for, with every picture in words, and nothing of the screen', async () => {
    const page = await openPage({ mold: 'Round stick 5 in', points: 'runs' });
    expect(await page.textContent('#quality h1')).toBe('Quality: Demo shop (invented), 2026-12-01');
    const words = (await page.textContent('#quality')) ?? '';
    expect(words).toContain('Round stick 5 in: 19 rounds logged.');
    expect(words).toContain('Mold Wedge tail 4.5 in: 109 of 132 pieces good in 11 rounds');
    expect(await page.locator('#quality h2').allTextContents()).toContain(
      'Bad pieces, Round stick 5 in',
    );
    const pictures = await page.locator('#quality .drawing').count();
    expect(pictures).toBeGreaterThan(2);
    expect(await page.locator('#quality .drawing > svg').count()).toBe(pictures);
    expect(await page.isEnabled('#print')).toBe(true);
    await page.emulateMedia({ media: 'print' });
    expect(await page.isVisible('.bar')).toBe(false);
    expect(await page.isVisible('#quality')).toBe(true);
  });

  test('of an empty log says so and draws nothing', async () => {
    const page = await openPage({}, async () => EMPTY);
    expect(await page.textContent('#quality h1')).toBe('Quality, 2026-12-01');
    const words = (await page.textContent('#quality')) ?? '';
    expect(words).toContain('All molds and patterns: 0 rounds logged.');
    expect(words).toContain('Nothing logged');
    expect(words).toContain('The control chart of bad pieces needs two rounds.');
    expect(await page.locator('#quality svg').count()).toBe(0);
  });

  test('a refusal and a failing call are said and leave nothing to print', async () => {
    const refused = await openPage({ points: 'days' });
    expect(await refused.textContent('#status')).toBe(
      'Points must be one of rounds, runs, got "days".',
    );
    expect(await refused.isEnabled('#print')).toBe(false);
    const lost = await openPage({}, () => Promise.reject(new Error('the connection was lost')));
    expect(await lost.textContent('#status')).toBe('The connection was lost.');
    expect(await lost.isEnabled('#print')).toBe(false);
  });
});
