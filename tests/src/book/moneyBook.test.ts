import { afterEach, describe, expect, test } from 'vitest';
import { indexCosts } from '../../../shared/money/cost/costIndex.ts';
import { planMoney } from '../../../shared/money/planMoney.ts';
import { filledBook } from '../../filledBook.ts';
import { demoMoneyBook } from '../../money/stock/demoMoneyBook.ts';
import { type TestBook, testBooks } from './openTestBook.ts';

/** A build or a set-up on a busy machine [ms]. */
const PATIENCE = 60_000;

const openBook = testBooks();
let book: TestBook;

afterEach(() => book.host.close());

/** A sheet as it shows, heading row first. */
async function cells(sheet: string): Promise<readonly (readonly unknown[])[]> {
  const values = await book.run(
    `return JSON.stringify(book.getSheetByName('${sheet}').getDataRange().getValues());`,
  );
  return JSON.parse(String(values));
}

async function column(sheet: string, heading: string): Promise<readonly unknown[]> {
  const [headings = [], ...rows] = await cells(sheet);
  const place = headings.indexOf(heading);
  return rows.map((row) => row[place]).filter((value) => value !== '' && value !== null);
}

describe('money in the workbook', () => {
  test(
    'the demo shop shows cost, price and margin of every order as the engine has them',
    async () => {
      book = await openBook();
      await book.menu('fillDemoShop');
      await book.host.settled();
      const index = indexCosts(demoMoneyBook());
      const found = index.index.book.orders.map((row) => planMoney(index, row));
      const money = found.flatMap((one) => (one.kind === 'money' ? [one] : []));
      expect(money).toHaveLength(12);
      expect(await column('Orders', 'Cost')).toEqual(money.map(({ cost }) => cost.total / 100));
      expect(await column('Orders', 'Quote price')).toEqual(
        money.map(({ price }) => (price.kind === 'price' ? price.goods / 100 : 0)),
      );
      const margins = money.map(({ agreed, price }) =>
        agreed ? agreed.margin : price.kind === 'price' ? price.margin : undefined,
      );
      (await column('Orders', 'Margin')).forEach((margin, place) => {
        expect(margin).toBeNear(margins[place] ?? Number.NaN, { relative: 1e-9 }); // units there and back
      });
      expect(await column('Orders', 'Money notes')).toEqual([]);
    },
    PATIENCE,
  );

  test(
    'units of prices in Shop follow its currency, and so does the cost',
    async () => {
      book = await openBook({ copyOf: await filledBook() });
      const units = async () => {
        const shop = await cells('Shop');
        const unitOf = (label: string) => shop.find(([one]) => one === label)?.[2];
        return ['Labor rate', 'Energy price', 'Mold wear', 'Minimum order', 'Overhead'].map(unitOf);
      };
      expect(await units()).toEqual([
        'USD per hour',
        'USD per kWh',
        'USD per round and mold',
        'USD',
        '',
      ]);
      const place = (await cells('Shop')).findIndex(([one]) => one === 'Currency');
      book.host.type('Shop', `B${place + 1}`, 'JPY');
      await book.host.settled();
      expect((await units()).slice(0, 2)).toEqual(['JPY per hour', 'JPY per kWh']);
      for (const cost of await column('Orders', 'Cost')) expect(Number.isInteger(cost)).toBe(true);
    },
    PATIENCE,
  );

  test(
    'an older book gains settings, columns and sheet; what stood there stays and goes on filling itself',
    async () => {
      book = await openBook({ copyOf: await filledBook() });
      // The layout before there was money: 15 typed columns, seven computed ones, no Supplies, 43 settings.
      await book.run(`
      book.deleteSheet(book.getSheetByName('Supplies'));
      var orders = book.getSheetByName('Orders');
      orders.deleteColumns(32, 4);
      orders.deleteColumns(16, 10);
      var shop = book.getSheetByName('Shop');
      var first = shop.getRange(1, 1, shop.getMaxRows(), 1).getValues().map(function (row) { return row[0]; }).indexOf('Currency');
      shop.deleteRows(first + 1, shop.getMaxRows() - first);
      book.getSheets().forEach(function (sheet) {
        sheet.getDeveloperMetadata().forEach(function (one) { if (one.getKey() === 'poursmithLayout') one.setValue('2'); });
      });`);
      const before = book.host.values('Orders', 'A2:O13');
      const pieces = await column('Orders', 'Pieces to pour');
      expect(pieces).toHaveLength(12);
      const report = await book.menu('setUpWorkbook');
      await book.host.settled();
      expect(report).toMatch(/^Created Supplies\. Added columns Rush, Discount, /);
      expect(report).toContain('Added to Shop: Currency, Labor rate, Overhead, ');
      expect(book.host.values('Orders', 'A2:O13')).toEqual(before);
      expect(await column('Orders', 'Pieces to pour')).toEqual(pieces);
      expect(await column('Orders', 'Cost')).toHaveLength(12);
      expect(await book.menu('setUpWorkbook')).toMatch(/^Everything was in place already\./);
    },
    PATIENCE,
  );
});
