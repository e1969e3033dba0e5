import { afterAll, beforeAll, expect, test } from 'vitest';
import { plainDates } from '../../../src/platform/plainDates.ts';
import { formatDate } from '../../../workbench/host/parseDate.ts';
import { filledBook } from '../../filledBook.ts';
import { type TestBook, testBooks } from '../book/openTestBook.ts';

const openBook = testBooks();
let book: TestBook;

beforeAll(async () => {
  book = await openBook({ copyOf: await filledBook() });
}, 120_000);
afterAll(() => book.host.close());

test('a first pour that was pasted as a time is a clock time in the plan, and in the columns', async () => {
  await book.run(`
    var sheet = book.getSheetByName('Orders');
    var headings = sheet.getRange(1, 1, 1, 30).getDisplayValues()[0];
    var rows = sheet.getRange(1, 1, 20, 1).getDisplayValues();
    var row = rows.findIndex(function (one) { return one[0] === '1006'; }) + 1;
    sheet.getRange(row, headings.findIndex(function (one) { return one.indexOf('First pour') === 0; }) + 1).setNumberFormat('h:mm').setValue(9.75 / 24);`);
  await book.host.settled();
  const result = await book.host.call('planSelectedOrder', [{ order: '1006' }], {
    window: 'a',
    selection: { sheet: 'Orders', range: 'A2' },
  });
  expect(result).toMatchObject({ value: { kind: 'ok', plan: { kind: 'plan', firstPour: 585 } } });
  expect(JSON.stringify(book.host.texts('Orders', 'A1:AI20'))).not.toContain('1899');
});

test('each different date is asked for once, whatever the number of cells', () => {
  const platform = globalThis as { Utilities?: unknown };
  let asked = 0;
  platform.Utilities = {
    formatDate: (date: Date, zone: string, pattern: string) => {
      asked += 1;
      return formatDate(date.getTime(), zone, pattern);
    },
  };
  const dateText = plainDates(() => 'America/Denver');
  const days = ['2026-12-01T07:00:00Z', '2026-12-02T07:00:00Z'].map((text) => new Date(text));
  const cells = Array.from({ length: 1000 }, (_, at) => days[at % 2] ?? new Date());
  expect(new Set(cells.map(dateText))).toEqual(new Set(['2026-12-01', '2026-12-02']));
  expect(asked).toBe(2);
  delete platform.Utilities;
});
