import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { declaredColumns, ordersFormula } from '../../../shared/book/layout/ordersFormula.ts';
import { demoRows } from '../../../templates/demoShop/demoShop.ts';
import { filledBook } from '../../filledBook.ts';
import { type TestBook, testBooks } from './openTestBook.ts';

const IN_PLACE = 'Everything was in place already. Nothing was changed.';
const CREATED =
  'Created Shop, Orders, Molds, Patterns, Doses, Materials, Supplies, Plates, People, Pour log, Heat trials, Bench trials, Measured figures, Quotes, Stock moves, Payments and Closed months. Nothing else changed.';
const SHEETS = [
  'Shop',
  'Orders',
  'Molds',
  'Patterns',
  'Doses',
  'Materials',
  'Supplies',
  'Plates',
  'People',
  'Pour log',
  'Heat trials',
  'Bench trials',
  'Measured figures',
  'Quotes',
  'Stock moves',
  'Payments',
  'Closed months',
];

const DEMO_ROWS = Object.values(demoRows()).reduce((sum, rows) => sum + rows.length, 0);

/** A build or a first set-up on a busy machine [ms]. */
const PATIENCE = 60_000;

/** Everything a set-up may touch, as text. */
const DUMP = `
  return JSON.stringify(book.getSheets().map(function (sheet) {
    var range = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns());
    return [sheet.getName(), range.getValues(), range.getFormulas(), range.getNotes(), range.getNumberFormats(),
      sheet.getProtections('RANGE').map(function (one) { return [one.getDescription(), one.getRange().getA1Notation()]; }),
      sheet.getDeveloperMetadata().map(function (one) { return [one.getKey(), one.getValue()]; })];
  }));`;

const openBook = testBooks();
let book: TestBook;

async function fresh(): Promise<TestBook> {
  book = await openBook();
  return book;
}

async function laidOut(): Promise<TestBook> {
  book = await openBook({ copyOf: await filledBook('layout') });
  return book;
}

const headings = (sheet: string) =>
  book.run(`var sheet = book.getSheetByName('${sheet}');
    return sheet.getRange(1, 1, 1, sheet.getMaxColumns()).getDisplayValues()[0];`);

describe('a new book', () => {
  let report = '';

  beforeAll(async () => {
    await fresh();
    report = await book.menu('setUpWorkbook');
  }, PATIENCE);
  afterAll(() => book.host.close());

  test('lays out an empty workbook in order, and does nothing the second time', async () => {
    expect(report).toBe(CREATED);
    expect(
      await book.run('return book.getSheets().map(function (one) { return one.getName(); })'),
    ).toEqual([...SHEETS, 'Sheet1']);
    const before = await book.run(DUMP);
    expect(await book.menu('setUpWorkbook')).toBe(IN_PLACE);
    expect(await book.run(DUMP)).toBe(before);
  });

  test('gives columns their headings, formats, notes and drop-downs, and grids no larger than needed', async () => {
    expect(await headings('Patterns')).toEqual([
      'Pattern',
      'Version',
      'Layer order',
      'Layer',
      'Share',
      'Fill mark',
      'Base',
      'Pour temperature (°F)',
      'Notes',
    ]);
    expect(
      await book.run(`
      var molds = book.getSheetByName('Molds');
      var orders = book.getSheetByName('Orders');
      var rule = function (range) {
        var found = range.getDataValidation();
        return found && [String(found.getCriteriaType()), found.getAllowInvalid()];
      };
      return {
        formats: ['A2', 'C2', 'D2'].map(function (cell) { return molds.getRange(cell).getNumberFormat(); }),
        shares: book.getSheetByName('Patterns').getRange('E2').getNumberFormat(),
        days: orders.getRange('B200').getNumberFormat(),
        note: molds.getRange('C1').getNote(),
        weight: molds.getRange('C1').getFontWeight(),
        kind: rule(molds.getRange('B200')),
        mold: rule(orders.getRange('E2')),
        due: rule(orders.getRange('C2')),
        free: rule(orders.getRange('D2')),
        listed: orders.getRange('E2').getDataValidation().getCriteriaValues()[0].getA1Notation().slice(0, 2),
        units: rule(book.getSheetByName('Shop').getRange('B3')),
        frozen: [orders.getFrozenRows(), orders.getFrozenColumns(), book.getSheetByName('Doses').getFrozenColumns()],
        size: [molds.getMaxRows(), molds.getMaxColumns()],
      };`),
    ).toEqual({
      formats: ['@', '0', '0.000'],
      shares: '0.0%',
      days: 'yyyy-mm-dd',
      note: 'Pieces one mold makes in one filling. Required. At least 1. At most 500. Whole numbers.',
      weight: 'bold',
      kind: ['VALUE_IN_LIST', false],
      mold: ['VALUE_IN_RANGE', true],
      due: ['DATE_IS_VALID_DATE', true],
      free: null,
      listed: 'A2',
      units: ['VALUE_IN_LIST', false],
      frozen: [1, 1, 0],
      size: [200, 16],
    });
  });

  test('protects headings and computed columns with a warning only, once each', async () => {
    const found = await book.run(`
      return book.getSheetByName('Orders').getProtections('RANGE').map(function (one) {
        return [one.getDescription(), one.getRange().getA1Notation(), one.isWarningOnly()];
      });`);
    expect(found).toEqual([
      ['Poursmith: headings of Orders', 'A1:AJ1', true],
      ['Poursmith: computed columns of Orders', 'Z2:AJ200', true],
    ]);
  });

  test('puts one formula into the heading cell of each computed column', async () => {
    const formulas = await book.run(
      `return book.getSheetByName('Orders').getRange('Y1:AJ1').getFormulas()[0];`,
    );
    const words = [
      'Pieces to pour',
      'Rounds',
      'Plastisol',
      'Cups',
      'Plate on',
      'Minutes of work',
      'Cost',
      'Quote price',
      'Margin',
      'Money notes',
      'Warnings',
    ];
    const told = words.map((one) => ordersFormula(one, declaredColumns()).replaceAll(';', ',')); // as en_US tells them
    expect(formulas).toEqual(['', ...told]);
  });
});

describe('Set up this workbook', () => {
  afterEach(() => book.host.close());

  test('moves an older layout forward and leaves every row and every column of the user as it was', async () => {
    await laidOut();
    await book.run(`
      var molds = book.getSheetByName('Molds');
      molds.deleteColumns(13, 1);
      molds.insertColumnsAfter(2, 1);
      molds.getRange('C1:C200').clearDataValidations().setNumberFormat('@');
      molds.getRange('C1').setValue('Shelf');
      molds.getRange('A2:E3').setValues([['Bar', 'open', 'top', 8, 0.3], ['Half-typed', '', 'low', 'eight', '']]);
      molds.getRange('P2').setValue('keep');
      var orders = book.getSheetByName('Orders');
      orders.getRange('A2:E2').setValues([['1', '', '', 'Customer 7', 'Bar']]);
      orders.deleteColumns(28, 1);
      var shop = book.getSheetByName('Shop');
      shop.getRange('B4').setValue(2500);
      shop.deleteRows(14, 1);
      book.getSheetByName('Plates').getDeveloperMetadata().forEach(function (one) { one.remove(); });`);
    expect(await book.menu('setUpWorkbook')).toBe(
      'Added column Plastisol to Orders. Added column Finish to Molds. Added to Shop: Left in each cup. Wrote the formulas of Pieces to pour, Rounds, Plastisol, Cups, Plate on, Minutes of work, Cost, Quote price, Margin, Money notes and Warnings in Orders. Brought formats, notes, drop-downs and protection up to date in Plates. Nothing else changed.',
    );
    expect(
      await book.run(`return book.getSheetByName('Molds').getRange('A2:E3').getValues()`),
    ).toEqual([
      ['Bar', 'open', 'top', 8, 0.3],
      ['Half-typed', '', 'low', 'eight', ''],
    ]);
    expect((await headings('Molds')) as string[]).toEqual([
      'Mold',
      'Kind',
      'Shelf',
      'Cavities',
      'Cavity volume (fl oz)',
      'Piece weight (oz)',
      'Profile',
      'Cavity length (in)',
      'Cavity width (in)',
      'Cavity depth (in)',
      'Block length (in)',
      'Block width (in)',
      'Block height (in)',
      'Pour time per cavity (s)',
      'Owned',
      'Notes',
      'Finish',
    ]);
    expect(
      await book.run(`
      var molds = book.getSheetByName('Molds');
      return [molds.getRange('P2').getValue(), String(molds.getRange('Q2').getDataValidation().getCriteriaType()),
        book.getSheetByName('Orders').getRange('Z1').getFormula().indexOf('Molds!A1:Q,') > 0,
        book.getSheetByName('Shop').getRange('B4').getValue()];`),
    ).toEqual(['keep', 'VALUE_IN_LIST', true, 2500]);
    expect(await book.menu('setUpWorkbook')).toBe(IN_PLACE);
  });

  test('gives a renamed sheet its name back instead of laying out a second one', async () => {
    await laidOut();
    await book.run(`book.getSheetByName('Molds').setName('Forms').getRange('A2').setValue('Bar');`);
    expect(await book.menu('setUpWorkbook')).toBe(
      'Gave the sheet Forms its name Molds back. Nothing else changed.',
    );
    expect(book.host.values('Molds', 'A2')).toEqual([['Bar']]);
  });

  test('names what it leaves alone: an unreadable unit, and typed values where a column should fill itself', async () => {
    await laidOut();
    await book.run(`
      book.getSheetByName('Molds').getRange('D1').setValue('Cavity volume (liters)');
      book.getSheetByName('Orders').getRange('AC1:AC2').setValues([['Cups'], [5]]);`);
    expect(await book.menu('setUpWorkbook')).toBe(
      `${IN_PLACE} In Molds, the heading Cavity volume must be followed by its unit in parentheses, got "Cavity volume (liters)". In Orders, the column Cups holds typed values, so it cannot fill itself: clear them, then set up again.`,
    );
    expect(
      await book.run(`return book.getSheetByName('Orders').getRange('AC1:AC2').getValues()`),
    ).toEqual([['Cups'], [5]]);
  });

  test('turns headings to the shop’s units on sheets without rows, and leaves the others', async () => {
    await laidOut();
    await book.run(`
      book.getSheetByName('Shop').getRange('B3').setValue('metric');
      book.getSheetByName('Molds').getRange('A2').setValue('Bar');`);
    expect(await book.menu('setUpWorkbook')).toBe(
      'Wrote metric units into the headings of Patterns, Doses, Materials, Plates, Pour log, Heat trials and Bench trials, which had no rows yet. Nothing else changed.',
    );
    expect(
      await book.run(`
      return [book.getSheetByName('Plates').getRange('F1').getValue(), book.getSheetByName('Plates').getRange('F1').getNote(),
        book.getSheetByName('Molds').getRange('D1').getValue()];`),
    ).toEqual([
      'Lowest setting (°C)',
      'Lowest mark of the dial. Greater than 0 °C. At most 400 °C.',
      'Cavity volume (fl oz)',
    ]);
    expect(await book.menu('setUpWorkbook')).toBe(IN_PLACE);
  });

  test('uses a sheet that the user made, keeping its columns on the left', async () => {
    await fresh();
    await book.run(`
      var own = book.insertSheet('Plates');
      own.getRange('A1:B2').setValues([['Plate', 'Bought'], ['Old griddle', 2019]]);`);
    expect(await book.menu('setUpWorkbook')).toBe(
      'Created Shop, Orders, Molds, Patterns, Doses, Materials, Supplies, People, Pour log, Heat trials, Bench trials, Measured figures, Quotes, Stock moves, Payments and Closed months. Added columns Kind, Usable length, Usable width, Watts, Lowest setting, Highest setting, Warm-up, Contact conductance, Dead band, Lid, Heat loss, Contact error, Dial offset, Circuit and Notes to Plates. Nothing else changed.',
    );
    expect(
      await book.run(`
      var own = book.getSheetByName('Plates');
      return [own.getRange('A2').getValue(), own.getRange(2, 17).getValue(), own.getRange(1, 17).getValue()];`),
    ).toEqual(['Old griddle', 2019, 'Bought']);
  });
});

describe('Fill with the demo shop', () => {
  afterEach(() => book.host.close());

  const FULL =
    'Nothing was changed: the demo shop only goes into an empty book, and Orders already has rows.';

  test('sets up and fills an empty workbook, and refuses to do so twice', async () => {
    await fresh();
    expect(await book.menu('fillDemoShop')).toBe(
      `${CREATED} Filled the book with an invented shop: ${DEMO_ROWS} rows.`,
    );
    expect(book.host.values('Molds', 'A2:D2')).toEqual([['Round stick 5 in', 'open', 8, 0.29]]);
    expect(book.host.values('Orders', 'A2:B2')).toEqual([
      ['1001', new Date('2026-10-26T06:00:00Z')], // midnight in Denver, still on daylight time
    ]);
    expect(book.host.values('Shop', 'B2:B4')).toEqual([['Demo shop (invented)'], ['US'], [2400]]);
    expect(
      await book.run(`
      return [book.getSheetByName('Pour log').getLastRow(), book.getSheetByName('Orders').getRange('L2').getDisplayValue(),
        book.getSheetByName('Patterns').getRange('F2').getDisplayValue()];`),
    ).toEqual([1 + demoRows().pourLog.length, '9:00 am', '40.0%']);
    // Texts are marked as text: the only formulas are eleven computed columns, two figures of Shop and six units in its currency.
    const formulas = await book.run(`
      return book.getSheets().reduce(function (found, sheet) {
        var all = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns()).getFormulas();
        return found.concat(all.reduce(function (one, row) { return one.concat(row.filter(String)); }, []));
      }, []).length;`);
    expect(formulas).toBe(19);
    const before = await book.run(DUMP);
    expect(await book.menu('fillDemoShop')).toBe(FULL);
    expect(await book.run(DUMP)).toBe(before);
    expect(await book.menu('setUpWorkbook')).toBe(IN_PLACE);
  });

  test('stays out of a book with a single row of the user', async () => {
    await laidOut();
    book.host.type('Stock moves', 'B2', 'Plastisol');
    const before = await book.run(DUMP);
    expect(await book.menu('fillDemoShop')).toBe(FULL.replace('Orders', 'Stock moves'));
    expect(await book.run(DUMP)).toBe(before);
  });

  test('writes in the units of headings that the user changed, and keeps a setting of the user', async () => {
    await laidOut();
    await book.run(`
      book.getSheetByName('Molds').getRange('D1').setValue('Cavity volume (mL)');
      book.getSheetByName('Shop').getRange('B4').setValue(900);`);
    await book.menu('fillDemoShop');
    // HB44, Appendix C: 1 US fluid ounce is 29.573 529 562 5 mL; the demo's first cavity holds 0.29 fl oz.
    expect(book.host.values('Molds', 'D2')[0]?.[0]).toBeNear(8.576323573125, { relative: 1e-11 }); // cells hold 12 figures
    expect(book.host.values('Shop', 'B4')).toEqual([[900]]);
  });
});
