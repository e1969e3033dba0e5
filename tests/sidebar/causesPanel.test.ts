import { describe, expect, test } from 'vitest';
import { HOSTILE } from '../paper/hostile.ts';
import { bench, idle } from './bench.ts';
import { expectFit, focusedId } from './parts.ts';

const { book, openBuilt, openPanel } = bench({ range: 'A8' });

const HEADINGS = '#view h3';

describe('causesFor', () => {
  test('takes the last bad round, a row by its number, or the row of the current cell', async () => {
    const last = await book.ask('causesFor', {});
    expect(last).toMatchObject({ kind: 'ok', shown: { row: 62, label: 'R-1006 round 6' } });
    const cold = await book.ask('causesFor', { row: '13' });
    expect(cold).toMatchObject({
      shown: { row: 13, causes: [{ cause: 'mold too cool at the first pour' }, {}, {}] },
    });
    const here = { sheet: 'Pour log', range: 'C24' };
    for (const asked of [{ from: 'selected' }, {}])
      expect(await book.ask('causesFor', asked, here)).toMatchObject({ shown: { row: 24 } });
    const blank = { sheet: 'Pour log', range: 'C150' };
    expect(await book.ask('causesFor', {}, blank)).toMatchObject({ shown: { row: 62 } });
  });

  test('says what to select where no round is selected, and refuses what it does not know', async () => {
    const refusal = async (payload: unknown, from?: { sheet: string; range: string }) => {
      const answer = await book.ask('causesFor', payload, from);
      return answer.kind === 'refused' ? answer.problems.map(({ text }) => text) : [];
    };
    const selected = { from: 'selected' };
    expect(await refusal(selected)).toEqual(['Select a row on the sheet Pour log first.']);
    expect(await refusal(selected, { sheet: 'Pour log', range: 'A1' })).toEqual([
      'The heading row is selected: select a row that holds a round.',
    ]);
    expect(await refusal(selected, { sheet: 'Pour log', range: 'A150' })).toEqual([
      'Row 150 of Pour log is blank: select a row that holds a round.',
    ]);
    expect(await refusal({ row: 'x' })).toEqual(['row must be a whole number, got "x"']);
    expect(await refusal({ from: 'there' })).toEqual(['from must be one of selected, got "there"']);
    expect(await refusal({ more: '1' })).toEqual([
      'more must be a field that this command knows, got "1"',
    ]);
  });

  test('showCauses opens the page for the round on show', async () => {
    expect(await book.ask('showCauses', { row: '13' })).toEqual({ kind: 'ok' });
    expect(book.shown[book.shown.length - 1]).toMatchObject({ title: 'What went wrong' });
  });
});

/** One book for all: a test that logs a row comes after those that look at the last bad round. */
describe('the causes of the panel', () => {
  test('a row of Pour log is read by keys: causes ranked, evidence in figures, cure and caution', async () => {
    const { page, status } = await openPanel({ open: 'causes', sheet: 'Pour log', range: 'A13' });
    expect(status).toBe('Done: R-1002 round 1 read.');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
    await page.selectOption('#badRound', '54');
    await idle(page);
    await page.focus('#selectedCauses');
    await page.keyboard.press('Enter');
    expect(await idle(page)).toBe('Done: R-1002 round 1 read.');
    expect(await page.locator(HEADINGS).allTextContents()).toEqual([
      '1. Mold too cool at the first pour.',
      '2. Layer below too cool to bond.',
      '3. Layer set before it found its level.',
    ]);
    const words = (await page.textContent('#view')) ?? '';
    for (const part of [
      'Row 13: R-1002 round 1',
      'Dusk line, Wedge tail 4.5 in: 4 of 12 pieces good.',
      'The mold top read 152 °F at the first pour, 61 °F below what it must read.',
      '°F under the threshold of 165 °F: likely peel.',
      'Next time: Heat the mold until its top reads 213 °F, or pour the line within 30 s of the belly.',
      'Explains: Cold crack (3), Peeled layer (4).',
      'Likely, not proven.',
      'no water near the melt',
    ])
      expect(words).toContain(part);
    expect(await focusedId(page)).toBe('selectedCauses');
  });

  test('another round is chosen from the list, the last bad one first', async () => {
    const { page } = await openPanel({ open: 'causes' });
    const options = await page.locator('#badRound option').allTextContents();
    expect(options[0]).toBe('Row 62, R-1006 round 6, 2026-11-24 12:54: 13 of 16 good');
    expect(options).toHaveLength(20);
    await page.selectOption('#badRound', '54');
    expect(await idle(page)).toBe('Done: R-1006 round 1 read.');
    expect(await page.inputValue('#badRound')).toBe('54');
  });

  test('where heat is not the cause it says so, with the record and what to check', async () => {
    const { page } = await openPanel({ open: 'causes' });
    const words = (await page.textContent('#view')) ?? '';
    for (const part of [
      'Dimple (1), Short fill (2)',
      'The heat record does not explain this.',
      'The record: The mold top read 216 °F;',
      'Check for dimple:',
      'Check for short fill:',
      'A blocked vent, or air with no way out.',
    ])
      expect(words).toContain(part);
    expect(words).not.toContain('Likely, not proven.');
  });

  test('a bad round that was just logged is told its causes at once', async () => {
    const { page } = await openPanel();
    await page.click('#read');
    await idle(page);
    await page.click('#log');
    await idle(page);
    const typed = { who: 'AK', moldTop: '150', pour1: '327', pour2: '330', gap12: '2.5' };
    for (const [field, text] of Object.entries({ ...typed, poured: '12', good: '8' }))
      await page.fill(`#${field}`, text);
    await page.fill('#coldCrack', '4');
    await page.check('input[name="tearTest"][value="tears in part"]');
    await page.click('#send');
    await idle(page);
    const words = (await page.textContent('#view')) ?? '';
    expect(words).toContain('What went wrong');
    expect(words).toContain(
      'The mold top read 150 °F at the first pour, 63 °F below what it must read.',
    );
    await page.click('#causes');
    expect(await idle(page)).toMatch(/^Done: .* read\.$/);
    expect(await page.textContent('#view h1')).toBe('What went wrong');
  });

  test('an empty log says how to come by causes', async () => {
    const { page, status } = await openPanel({
      open: 'causes',
      answers: { causesFor: { kind: 'ok', shopName: '', rounds: [] } },
    });
    expect(status).toBe('Done: Pour log read: no round came out bad.');
    expect(await page.textContent('#view .empty')).toContain('After a run press Log what came out');
    expect(await page.locator('#printCauses, #badRound').count()).toBe(0);
  });

  test('unread, unnamed and unplanned are said; hostile names are drawn as text', async () => {
    const [, hostile = ''] = HOSTILE;
    const shown = {
      row: 3,
      label: hostile,
      loggedAt: '',
      poured: 5,
      good: 1,
      mold: hostile,
      pattern: hostile,
      causes: [],
      unexplained: [],
      unread: [{ defect: 'Cold crack (1)', checks: [hostile] }],
      unnamed: 3,
      blanks: ['Mold top', 'Gap 1-2'],
      isTwoPiece: true,
    };
    const answers = { causesFor: { kind: 'ok', shopName: '', rounds: [], shown, insteadOf: 2 } };
    const { page, status } = await openPanel({ open: 'causes', answers });
    expect(status).toBe('Done: Row 2 was corrected: row 3 stands for it.');
    const words = (await page.textContent('#view')) ?? '';
    for (const part of [
      'Too little is known to say: Mold top and Gap 1-2 are blank; how warm layers met in a two-piece mold is not known well enough.',
      '3 bad pieces with no defect named',
      hostile,
    ])
      expect(words).toContain(part);
    expect(await page.locator('#view img, #view script').count()).toBe(0);
    const noPlan = { ...shown, unread: [], unnamed: 0, noPlan: 'mold is gone' };
    const gone = { causesFor: { kind: 'ok', shopName: '', rounds: [], shown: noPlan } };
    const { page: other } = await openPanel({ open: 'causes', answers: gone });
    expect(await other.textContent('#view')).toContain(
      'The round cannot be held against a plan: Mold is gone.',
    );
  });

  test('a call that fails and one that is refused leave the round on show', async () => {
    const failing: string[] = [];
    const { page } = await openPanel({ open: 'causes', failing });
    const before = await page.textContent('#view h2');
    expect(before).toMatch(/^Row \d+: /);
    failing.push('The connection was lost.');
    await page.click('#selectedCauses');
    expect(await idle(page)).toBe(
      'Please mend: The connection was lost. Nothing you typed is lost: try again.',
    );
    await page.click('#selectedCauses');
    expect(await idle(page)).toBe('Please mend: Select a row on the sheet Pour log first.');
    expect(await page.textContent('#view h2')).toBe(before);
  });

  test.each([300, 280])('fits %i px without a sideways scroll, targets of 44 px', async (width) => {
    const { page } = await openPanel({ open: 'causes', width });
    await page.selectOption('#badRound', '54');
    await idle(page);
    await expectFit(page, width, 'button, select');
  });
});

test('the page to print holds the causes of its round and nothing of the screen', async () => {
  const page = await openBuilt('Causes.html', { width: 860, request: { row: '13' } });
  await page.waitForSelector('#causes h3');
  const words = (await page.textContent('#causes')) ?? '';
  expect(words).toContain('Row 13, R-1002 round 1, 2026-11-05 09:49: 4 of 12 good.');
  expect(words).toContain('2. Layer below too cool to bond.');
  await page.emulateMedia({ media: 'print' });
  expect(await page.isVisible('.bar')).toBe(false);
  expect(await page.isVisible('#causes')).toBe(true);
});
