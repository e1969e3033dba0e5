import { describe, expect, test } from 'vitest';
import { openBench } from '../openBench.ts';

const book = openBench();

const WHOLE = 'A:M';

function tabTexts(): readonly string[] {
  return book.host.values('Run sheet', WHOLE).flat().map(String);
}

describe('the Run sheet tab', () => {
  test('says what the sheet says and has its tick boxes unticked', async () => {
    expect(await book.ask('makeRunSheet', { order: '1006' })).toMatchObject({ kind: 'ok' });
    const texts = tabTexts();
    for (const words of ['Cautions', 'Before heat', 'Extraction running', '260 °F'])
      expect(texts).toContain(words);
    expect(texts).toContainEqual(
      expect.stringMatching(/^7 cups, 3\d\.\d fl oz of plastisol \(1\d{3} g\)$/),
    );
    const unticked = book.host
      .values('Run sheet', WHOLE)
      .flat()
      .filter((value) => value === false);
    expect(unticked.length).toBeGreaterThan(20);
  });

  test('a shorter run leaves nothing of a longer one behind', async () => {
    await book.ask('makeRunSheet', { order: '1011' });
    const long = book.host
      .values('Run sheet', WHOLE)
      .filter((row) => row.some((value) => value !== '' && value !== null));
    await book.ask('makeRunSheet', { order: '1012' });
    const short = book.host
      .values('Run sheet', WHOLE)
      .filter((row) => row.some((value) => value !== '' && value !== null));
    expect(short.length).toBeLessThan(long.length);
    expect(tabTexts()).toContain('1012');
    expect(tabTexts()).not.toContain('1011');
  });

  test('a note that looks like a formula stays a text', async () => {
    const evil = '=IMPORTXML("http://example.test","//a")';
    book.host.type('Orders', 'O13', `'${evil}`);
    await book.host.settled();
    await book.ask('makeRunSheet', { order: '1012' });
    expect(tabTexts()).toContain(`Note: ${evil}`);
  });
});
