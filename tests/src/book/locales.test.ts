import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type TestBook, testBooks } from './openTestBook.ts';

const PATIENCE = 120_000;
const FROM = { window: 'a', selection: { sheet: 'Orders', range: 'A2' } };
const SHEETS = ['Shop', 'Orders', 'Molds', 'Materials', 'Plates'];
const EVERY_CELL = `JSON.stringify(${JSON.stringify(SHEETS)}.map((name) => book.getSheetByName(name).getDataRange().getValues()))`;

const open = testBooks();
let usual: unknown;

beforeAll(async () => {
  const book = await open();
  await book.menu('fillDemoShop');
  await book.host.settled();
  usual = await book.run(`return ${EVERY_CELL};`);
  await book.host.close();
}, PATIENCE);

describe.each(['de_DE', 'pt_BR'])('a workbook of %s', (locale) => {
  let book: TestBook;

  beforeAll(async () => {
    book = await open({ locale });
    await book.menu('fillDemoShop');
    await book.host.settled();
  }, PATIENCE);

  afterAll(() => book.host.close());

  test('is set up and filled with the same figures, computed columns and all', async () => {
    expect(await book.run(`return ${EVERY_CELL};`)).toBe(usual);
    expect(usual).not.toMatch(/#(ERROR|NAME|REF|VALUE|N\/A)/);
  });

  test('its formulas are known as the add-on’s own, with either separator', async () => {
    const formulas = String(
      await book.run(
        `return JSON.stringify(book.getSheetByName('Orders').getDataRange().getFormulas()[0]);`,
      ),
    );
    expect(formulas).toContain('POUR_ORDERS(');
    expect(formulas).toContain(';');
    expect(await book.menu('setUpWorkbook')).toMatch(/^Everything was in place already\./);
  });

  test(
    'plans, makes a sheet and logs what is typed with a decimal comma',
    async () => {
      const ask = async (name: string, payload: object) => {
        const result = await book.host.call(name, [payload], FROM);
        if (result.kind === 'failure') throw new Error(result.message);
        return Object(result.value) as Readonly<Record<string, unknown>>; // any value makes an object
      };
      expect(await ask('planSelectedOrder', { order: '1006' })).toMatchObject({
        plan: { kind: 'plan' },
      });
      expect(await ask('makeRunSheet', { order: '1006' })).toMatchObject({ runId: '1006-2' });
      const { token } = await ask('startLog', { order: '1006' });
      const values = {
        poured: '16',
        good: '15',
        who: 'AK',
        tearTest: 'tears through',
        run: '1006-2',
      };
      expect(await ask('logOutcome', { order: '1006', token, values })).toMatchObject({
        logged: 'now',
      });
      const row =
        book.host.values('Molds', 'A1:A20').findIndex(([name]) => name === 'Wedge tail 4.5 in') + 1;
      const column = 'D';
      const before = book.host.values('Molds', `${column}${row}`)[0]?.[0];
      book.host.type('Molds', `${column}${row}`, '0,5');
      await book.host.settled();
      expect(book.host.values('Molds', `${column}${row}`)[0]?.[0]).toBe(0.5);
      book.host.type('Molds', `${column}${row}`, String(before).replace('.', ','));
    },
    PATIENCE,
  );
});
