import { describe, expect, test } from 'vitest';
import type { AnswerOf } from '../../shared/commands/commandTypes.ts';
import { bench } from './bench.ts';
import { focusedId, pageCount } from './parts.ts';

const { book, openDialog } = bench();

function pictured(answer: AnswerOf<'heatPicturesFor'>) {
  if (answer.kind === 'refused') throw new Error('refused');
  return answer;
}

describe('the heat of an order', () => {
  test('is three pictures as data, with the warnings about heat and every caution', async () => {
    const answer = pictured(await book.ask('heatPicturesFor', { order: '1006' }));
    expect(answer.heading).toBe('Order 1006: Dusk line v2 in Round stick 5 in');
    expect(answer.pictures.map(({ kind }) => kind)).toEqual([
      'heat-up',
      'layer-timeline',
      'layer-profile',
    ]);
    expect(answer.cautions.join(' ')).toContain('SDS');
  });

  test('holds no number that is lost on the way to the page', async () => {
    const answer = await book.ask('heatPicturesFor', { order: '1009' });
    expect(JSON.stringify(answer)).not.toContain('null');
  });

  test('of another pour time has other clock times', async () => {
    const early = pictured(await book.ask('heatPicturesFor', { order: '1006', firstPour: '9:00' }));
    const late = pictured(await book.ask('heatPicturesFor', { order: '1006', firstPour: '11:00' }));
    const onAt = ({ pictures: [first] }: typeof early) =>
      first?.kind === 'heat-up' ? first.target?.onAt : undefined;
    expect((onAt(late) ?? 0) - (onAt(early) ?? 0)).toBeNear(120, { absolute: 1e-6 });
  });

  test.each(['showHeat', 'heatPicturesFor'] as const)(
    '%s names an order that is not there',
    async (verb) => {
      expect(await book.ask(verb, { order: '99' })).toEqual({
        kind: 'refused',
        problems: [{ field: 'order', text: 'order must be listed in Orders, got "99"' }],
      });
      expect(await book.ask(verb, { order: '1006', other: 'x' })).toMatchObject({
        kind: 'refused',
      });
    },
  );

  test('the request in the dialog holds nothing that HTML could read', async () => {
    const request = { order: '1006', firstPour: '"><script>alert(1)</script>' };
    expect(await book.ask('showHeat', request)).toEqual({ kind: 'ok', order: '1006' });
    const shown = book.shown.at(-1);
    const html = shown?.kind === 'dialog' ? shown.html : '';
    expect(html).not.toContain('alert(1)</script>');
    const encoded = /data-request="([^"]*)"/.exec(html)?.[1] ?? '';
    expect(JSON.parse(decodeURIComponent(encoded))).toEqual(request);
  });
});

describe('the heat dialog', () => {
  test('draws each picture with its words below it, reading advice and cautions', async () => {
    await book.ask('showHeat', { order: '1006' });
    const page = await openDialog();
    await page.waitForSelector('#heat svg');
    expect(await page.locator('#heat svg[role="img"]').count()).toBe(3);
    expect(await page.locator('#heat h2').allTextContents()).toEqual([
      'How the mold heats up',
      'One round, layer by layer',
      'Temperature through the layers',
      'Reading the mold',
      'Cautions',
    ]);
    for (const section of await page.locator('#heat section:has(svg)').all())
      expect(await section.locator('> p').textContent()).toBe(
        await section.locator('desc').textContent(),
      );
    expect(await page.textContent('#heat')).toContain('surface probe');
    expect(await page.textContent('#status')).toBe('');
    expect(await page.getAttribute('main', 'aria-busy')).toBeNull();
  });

  test.each([320, 860])('at %i px nothing is wider than the dialog', async (width) => {
    await book.ask('showHeat', { order: '1009' });
    const page = await openDialog(undefined, width);
    await page.waitForSelector('#heat svg');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      width,
    );
  });

  test('is drawn anew at another width, its letters as large as before', async () => {
    await book.ask('showHeat', { order: '1006' });
    const page = await openDialog();
    await page.waitForSelector('#heat svg');
    const drawn = () =>
      page
        .locator('#heat svg')
        .first()
        .evaluate((svg) => ({
          width: Number(svg.getAttribute('width')),
          shown: svg.getBoundingClientRect().width,
        }));
    const wide = await drawn();
    await page.setViewportSize({ width: 420, height: 640 });
    await page.waitForFunction(
      (before) => Number(document.querySelector('#heat svg')?.getAttribute('width')) < before,
      wide.width,
    );
    const narrow = await drawn();
    expect(narrow.shown).toBeNear(narrow.width, { absolute: 1 });
  });

  test('prints the pictures alone, from the keyboard', async () => {
    await book.ask('showHeat', { order: '1006' });
    const page = await openDialog();
    await page.waitForSelector('#heat svg');
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', 'yes');
    });
    await page.keyboard.press('Tab');
    expect(await focusedId(page)).toBe('print');
    await page.keyboard.press('Enter');
    expect(await page.getAttribute('body', 'data-printed')).toBe('yes');
    await page.emulateMedia({ media: 'print' });
    expect(await page.isVisible('.bar')).toBe(false);
    expect(await page.isVisible('#heat')).toBe(true);
  });

  test('says what it waits for, and one sentence when the call fails; it cannot be printed then', async () => {
    await book.ask('showHeat', { order: '1006' });
    let fail = () => {};
    const waiting = new Promise<never>((_, reject) => {
      fail = () => reject(new Error('the connection was lost'));
    });
    const page = await openDialog(() => waiting);
    expect(await page.textContent('#status')).toBe('Working out the heat…');
    expect(await page.getAttribute('main', 'aria-busy')).toBe('true');
    fail();
    await page.waitForFunction(() => !document.querySelector('main')?.hasAttribute('aria-busy'));
    expect(await page.textContent('#status')).toBe('The connection was lost.');
    expect(await page.isDisabled('#print')).toBe(true);
  });

  test('shows what keeps an order from having a plan', async () => {
    const before = book.host.texts('Orders', 'H11')[0]?.[0] ?? '';
    book.host.type('Orders', 'H11', '');
    await book.host.settled();
    await book.ask('showHeat', { order: '1010' });
    const page = await openDialog();
    await page.waitForFunction(() => !document.querySelector('main')?.hasAttribute('aria-busy'));
    expect(await page.textContent('#status')).toBe(
      'In Orders, row 11: quantity must be given, got nothing.',
    );
    expect(await page.isDisabled('#print')).toBe(true);
    book.host.type('Orders', 'H11', before);
    await book.host.settled();
  });
});

describe('the print dialog', () => {
  test('prints a page of pictures where that is ticked, and none where it is not', async () => {
    await book.ask('printRunSheet', { order: '1006', runId: '1006-2' });
    const page = await openDialog();
    await page.waitForSelector('.run-sheet');
    const pages = async () => pageCount(await page.pdf({ format: 'Letter' }));
    expect(await pages()).toBe(1);
    await page.getByLabel('With a page of pictures').check();
    expect(await page.isVisible('.pictures svg.layer-timeline')).toBe(true);
    expect(await pages()).toBe(2);
  });
});
