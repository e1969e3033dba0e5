import { describe, expect, test } from 'vitest';
import { bench, idle } from './bench.ts';
import { card, expectFit } from './parts.ts';

const { openPanel } = bench({ range: 'A8' });

const NOTHING = { kind: 'ok', system: 'US', proposals: [], problems: [] };

describe('the trials of the panel', () => {
  test('shows each figure in use beside what the trials give, with its picture', async () => {
    const { page, status } = await openPanel({ open: 'trials' });
    expect(status).toBe('Done: Trials read.');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
    expect(await page.locator('.card h2').allTextContents()).toEqual([
      'Contact: Griddle A',
      'Contact: Bench plate B',
      'Set temperature: Plastisol medium',
      'Microwave efficiency',
      'Drop: Black',
      'Bond temperature',
    ]);
    const griddle = card(page, 'Contact: Griddle A');
    expect(await griddle.locator('dd').first().textContent()).toBe('96 W/m²·K');
    const words = (await griddle.textContent()) ?? '';
    expect(words).toMatch(/Trials give8\d W\/m²·K ± \d/);
    expect(words).toContain('The readings tell contact and heat loss apart.');
    expect(words).toContain('From T-1 (2026-10-30) and T-3 (2026-11-06): 11 readings.');
    expect(await griddle.locator('svg[role="img"]').count()).toBe(2);
    expect(await griddle.locator('figcaption').allTextContents()).toEqual([
      'Round stick 5 in, plate at 270 °F',
      'Wedge tail 4.5 in, plate at 280 °F',
    ]);
    const plate = (await card(page, 'Bench plate B').textContent()) ?? '';
    expect(plate).toContain('500 W/m²·K, the usual figure');
    expect(plate).toMatch(
      /5 readings cannot tell contact from heat loss, which is taken as usual: add one after \d+ min\./,
    );
  });

  test('puts a figure in use and goes back to the one before, by keys alone', async () => {
    const { page, verbs } = await openPanel({ open: 'trials' });
    await page.fill('#who', 'AK');
    await page.focus('#use0');
    expect(await page.getAttribute('#use0', 'aria-label')).toBe(
      'Use this figure, Contact: Griddle A',
    );
    await page.keyboard.press('Enter');
    expect(await idle(page)).toBe(
      'Done: Contact: Griddle A: the measured figure is in use. Measured figures keeps what stood there.',
    );
    expect(await page.locator('#use0').count()).toBe(0);
    expect(await page.inputValue('#who')).toBe('AK');
    expect(await card(page, 'Griddle A').textContent()).toContain('The measured figure is in use.');
    expect(await page.textContent('#back0')).toBe('Go back to 96 W/m²·K');
    await page.focus('#back0');
    await page.keyboard.press('Enter');
    expect(await idle(page)).toBe('Done: Contact: Griddle A: the older figure is back.');
    expect(await page.locator('#use0').count()).toBe(1);
    expect(verbs()).toEqual(['readTrials', 'adoptFigure', 'revertFigure']);
  });

  test('tells how to make a first trial, with its caution, where there is none', async () => {
    const { page, status } = await openPanel({ open: 'trials', answers: { readTrials: NOTHING } });
    expect(status).toBe('Done: Trials read: there are none yet.');
    const words = (await page.textContent('#view')) ?? '';
    for (const part of [
      'No trial to go by yet',
      'Bare metal reads far too low.',
      'Hot metal burns and does not look hot.',
      'its manual comes first.',
    ])
      expect(words).toContain(part);
    expect(await page.locator('#who').count()).toBe(0);
  });

  test('names the rows that were left out, and draws hostile names as text', async () => {
    const hostile = '<img src=x onerror=alert(1)>';
    const proposal = {
      figure: 'contact',
      of: hostile,
      present: { value: 96, from: 'own' },
      result: { kind: 'no fit', because: 'fewer than two readings' },
      isInUse: false,
      trials: [{ trial: hostile }],
      pictures: [],
      back: { kind: 'changed by hand' },
    };
    const problem = { sheet: 'Heat trials', row: 3, heading: 'Mold', text: `mold "${hostile}"` };
    const answer = { ...NOTHING, proposals: [proposal], problems: [problem] };
    const { page } = await openPanel({ open: 'trials', answers: { readTrials: answer } });
    const words = (await page.textContent('#view')) ?? '';
    for (const part of [
      `Contact: ${hostile}`,
      'Heat trials, row 3, Mold: ',
      'Give at least two readings.',
      'Changed by hand since it was put in use: it stays as it is.',
    ])
      expect(words).toContain(part);
    expect(await page.locator('#view img').count()).toBe(0);
    expect(await page.locator('#use0, #back0').count()).toBe(0);
  });

  test('a call that fails and one that is refused leave the cards as they were', async () => {
    const failing: string[] = [];
    const refused = { kind: 'refused', problems: [{ field: '', text: 'Plates is gone.' }] };
    const { page } = await openPanel({
      open: 'trials',
      failing,
      answers: { adoptFigure: refused },
    });
    failing.push('The connection was lost.');
    await page.click('#use0');
    expect(await idle(page)).toBe(
      'Please mend: The connection was lost. Nothing you typed is lost: try again.',
    );
    await page.click('#use0');
    expect(await idle(page)).toBe('Please mend: Plates is gone.');
    expect(await page.locator('.card').count()).toBe(6);
  });

  test('the plan on show is planned again with the figures of now', async () => {
    const { page, verbs } = await openPanel({ open: 'trials' });
    await page.click('#plan');
    expect(await page.textContent('#view')).toContain('Click a row on the sheet Orders');
    await page.click('#read');
    await idle(page);
    await page.click('#trials');
    await idle(page);
    await page.click('#plan');
    expect(await idle(page)).toBe('Done: Order 1007 planned again.');
    expect(verbs().filter((verb) => verb === 'planSelectedOrder')).toHaveLength(2);
  });

  test.each([300, 280])('fits %i px without a sideways scroll, targets of 44 px', async (width) => {
    const { page } = await openPanel({ open: 'trials', width });
    await expectFit(page, width, 'button, input');
  });
});
