import { CsvParserStream } from '@cj-tech-master/excelts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ExportTable } from '../../../shared/money/books/exportTable.ts';
import { csvText } from '../../../sidebar/page/csvText.ts';

/** The rows of a CSV text, read by a parser that is not the one that wrote it. */
async function readBack(text: string): Promise<readonly (readonly string[])[]> {
  expect(text.startsWith('\ufeff')).toBe(true);
  const parser = new CsvParserStream({ headers: false });
  const rows: string[][] = [];
  const done = new Promise<void>((resolve, reject) => {
    parser.on('data', (row: string[]) => rows.push(row));
    parser.on('end', () => resolve());
    parser.on('error', reject);
  });
  parser.end(text.slice(1));
  await done;
  return rows;
}

/** That parser reads every line end inside a cell as a line feed. */
function lineFeeds(text: string): string {
  return text.replace(/\r\n?/g, '\n');
}

/** A cell as it should be read: the apostrophe is there only before what could run. */
function expected(cell: string | number): string {
  return typeof cell === 'string' && /^[=+\-@\t\r\n]/.test(cell) ? `'${cell}` : String(cell);
}

const HEADINGS = ['Name', 'Amount', 'Note'];

describe('a CSV file', () => {
  test('has CR LF after each line, quotes doubled, a byte order mark', () => {
    const table: ExportTable = {
      headings: HEADINGS,
      rows: [
        ['Hook, size 4', -12.5, 'say "no"'],
        ['two\nlines', 0, ''],
      ],
    };
    // RFC 4180, section 2, rules 1, 2, 6 and 7.
    expect(csvText(table)).toBe(
      '\ufeffName,Amount,Note\r\n"Hook, size 4",-12.5,"say ""no"""\r\n"two\nlines",0,\r\n',
    );
  });

  test.each([
    ['=1+1', "'=1+1"],
    ['=HYPERLINK("http://x","y")\nmore', '\'=HYPERLINK("http://x","y")\nmore'],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t=1"],
    ['\r=1', "'\r=1"],
    ['\n=1', "'\n=1"],
  ])('gives the text %j an apostrophe', async (text, kept) => {
    const rows = await readBack(csvText({ headings: HEADINGS, rows: [[text, 1, '']] }));
    expect(rows[1]).toEqual([lineFeeds(kept), '1', '']);
  });

  test.each([
    ['a negative number', -0.05, '-0.05'],
    ['a date', '2026-11-30', '2026-11-30'],
    ['a name with a hyphen', 'R-1001', 'R-1001'],
    ['a mail address', 'a@b.c', 'a@b.c'],
    ['an apostrophe', "O'Neil", "O'Neil"],
  ])('leaves %s alone', async (_, cell, kept) => {
    const rows = await readBack(csvText({ headings: HEADINGS, rows: [[cell, 1, '']] }));
    expect(rows[1]).toEqual([kept, '1', '']);
  });

  test('comes back cell by cell, whatever the cells hold', async () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom('=', '+', '-', '@', '\t', '\n', '"', ',', "'", 'ä', '1') }),
    );
    const number = fc.oneof(fc.integer(), fc.double({ noNaN: true, noDefaultInfinity: true }));
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(text, number, text), { maxLength: 8 }), async (rows) => {
        const [headings, ...back] = await readBack(csvText({ headings: HEADINGS, rows }));
        expect(headings).toEqual(HEADINGS);
        expect(back).toEqual(rows.map((row) => row.map((cell) => lineFeeds(expected(cell)))));
        // A number is read as itself again.
        for (const [index, [, amount]] of rows.entries())
          expect(Number(back[index]?.[1])).toBe(amount + 0);
      }),
    );
  });
});
