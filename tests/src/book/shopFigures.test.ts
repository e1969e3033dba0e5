import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { filledBook } from '../../filledBook.ts';
import { type TestBook, testBooks } from './openTestBook.ts';

/** A build or a first set-up on a busy machine [ms]. */
const PATIENCE = 60_000;

const openBook = testBooks();
let book: TestBook;

/** Label, shown value and unit of the rows that fill themselves. */
async function figures() {
  return book.run(`
    var cells = book.getSheetByName('Shop').getDataRange().getDisplayValues();
    return cells.filter(function (row) {
      return row[0] === 'Boiling point here' || row[0] === 'Mold top must read';
    }).map(function (row) { return row.slice(0, 3); });`);
}

describe('the rows of Shop that fill themselves', () => {
  beforeEach(async () => {
    book = await openBook({ copyOf: await filledBook('layout') });
  }, PATIENCE);
  afterEach(() => book.host.close());

  test('show the local boiling point and the reading that starts a run, right below its setting', async () => {
    // FSIS prints 212 °F at sea level; the setting is 3 K, 5.4 °F.
    expect(await figures()).toEqual([
      ['Boiling point here', '212.0', '°F'],
      ['Mold top must read', '217.4', '°F'],
    ]);
    const labels = await book.run(
      `return book.getSheetByName('Shop').getRange('A5:A9').getValues().map(String);`,
    );
    expect(labels).toEqual([
      'Room temperature',
      'Mold top above boiling',
      'Boiling point here',
      'Mold top must read',
      'Wait after ready',
    ]);
  });

  test('follow the elevation and the setting, each in the unit of its row', async () => {
    book.host.type('Shop', 'B4', '5000');
    book.host.type('Shop', 'B6', '0');
    // FSIS: 203 °F at 5,000 ft, in whole degrees.
    expect(await figures()).toEqual([
      ['Boiling point here', '202.8', '°F'],
      ['Mold top must read', '202.8', '°F'],
    ]);
    book.host.type('Shop', 'B4', '1524');
    book.host.type('Shop', 'C4', 'm');
    book.host.type('Shop', 'B6', '10');
    book.host.type('Shop', 'C6', '°C');
    expect(await figures()).toEqual([
      ['Boiling point here', '202.8', '°F'],
      ['Mold top must read', '220.8', '°F'],
    ]);
  });

  test('stand in metric units in a metric shop, and come to an older book at the end of its rows', async () => {
    await book.run(`
      var shop = book.getSheetByName('Shop');
      shop.deleteRows(7, 2);
      shop.getRange('B3').setValue('metric');`);
    expect(await book.menu('setUpWorkbook')).toContain(
      'Added to Shop: Boiling point here and Mold top must read.',
    );
    expect(await figures()).toEqual([
      ['Boiling point here', '100.0', '°C'],
      ['Mold top must read', '103.0', '°C'],
    ]);
  });

  test('go on filling themselves in the demo shop', async () => {
    await book.menu('fillDemoShop');
    // 2,400 ft.
    expect(await figures()).toEqual([
      ['Boiling point here', '207.6', '°F'],
      ['Mold top must read', '213.0', '°F'],
    ]);
  });
});
