import { describe, expect, test } from 'vitest';
import { openFixture } from './fixture.ts';

const RULE = 'SpreadsheetApp.newDataValidation()';

describe('the stand-in refuses what the platform refuses', () => {
  test.each([
    {
      given: 'sheet.getRange("A1:B2").setValues([[1, 2]])',
      expected:
        'The number of rows in the data does not match the number of rows in the range. The data has 1 but the range has 2.',
    },
    {
      given: 'sheet.getRange("A1:B2").setValues([[1, 2], [3]])',
      expected:
        'The number of columns in the data does not match the number of columns in the range. The data has 1 but the range has 2.',
    },
    {
      given: 'sheet.getRange("A1:B1").setNumberFormats([["0"]])',
      expected:
        'The number of columns in the data does not match the number of columns in the range. The data has 1 but the range has 2.',
    },
    {
      given: 'sheet.getRange("A1:A2").setFormulas([["=1"]])',
      expected:
        'The number of rows in the data does not match the number of rows in the range. The data has 1 but the range has 2.',
    },
    {
      given: 'sheet.getRange("A1:A2").setNotes([["a"]])',
      expected:
        'The number of rows in the data does not match the number of rows in the range. The data has 1 but the range has 2.',
    },
    {
      given: 'sheet.getRange(1001, 1)',
      expected: 'The coordinates of the range are outside the dimensions of the sheet.',
    },
    {
      given: 'sheet.getRange(0, 1)',
      expected: 'The starting row or column of the range is too small.',
    },
    {
      given: 'sheet.getRange(1, 1, 0, 1)',
      expected: 'The number of rows in the range must be at least 1.',
    },
    { given: 'sheet.getRange("nowhere")', expected: 'Range not found: nowhere' },
    {
      given: 'sheet.getRange("A1").setNote(3)',
      expected: "The parameters (number) don't match the method signature.",
    },
    {
      given: 'sheet.setName({})',
      expected: "The parameters (object) don't match the method signature.",
    },
    {
      given: 'sheet.getRange("A1").setDataValidation(sheet)',
      expected: "The parameters (SpreadsheetApp.Sheet) don't match the method signature.",
    },
    {
      given: 'sheet.getRange("A1").setValue([1])',
      expected: 'A cell takes a number, text, a truth value or a date',
    },
    {
      given: 'sheet.getRange("A1").paint()',
      expected: "Range.paint is not part of the workbench's stand-in",
    },
    {
      given: 'SpreadsheetApp.openById("x")',
      expected: "SpreadsheetApp.openById is not part of the workbench's stand-in",
    },
    {
      given: 'SpreadsheetApp.BorderStyle.WAVY',
      expected: 'SpreadsheetApp.BorderStyle.WAVY does not exist',
    },
    { given: 'sheet.name = 1', expected: 'Sheet.name cannot be set' },
    {
      given: 'ss.insertSheet("sheet1")',
      expected: 'A sheet with the name "sheet1" already exists. Please enter another name.',
    },
    { given: 'ss.deleteSheet(sheet)', expected: "You can't remove all the sheets in a document." },
    { given: 'sheet.deleteRows(1, 1000)', expected: "You can't delete all the rows on the sheet." },
    { given: 'sheet.deleteColumns(26, 2)', expected: 'Those columns are out of bounds.' },
    { given: `${RULE}.build()`, expected: 'The data validation rule has no criteria' },
    { given: 'sheet.getProtections("CELL")', expected: 'There is no protection type CELL' },
    {
      given: 'HtmlService.createHtmlOutputFromFile("Missing")',
      expected: 'No HTML file named Missing was found.',
    },
    { given: 'setTimeout(() => {}, 1)', expected: 'setTimeout is not defined' },
    { given: 'new URL("https://example.org")', expected: 'URL is not defined' },
    { given: 'structuredClone({})', expected: 'structuredClone is not defined' },
    { given: 'process.exit()', expected: 'process is not defined' },
    {
      given: 'return { when: [new Date(0)] }',
      expected: 'the result of evaluate.when.0 holds a Date, which may not pass',
    },
    {
      given: 'const a = {}; a.a = a; return a',
      expected: 'the result of evaluate.a holds itself, which may not pass',
    },
    {
      given: 'return { f: () => 1 }',
      expected: 'the result of evaluate.f holds a function, which may not pass',
    },
  ])('$given', async ({ given, expected }) => {
    const { failure } = await openFixture();
    expect(await failure(given)).toBe(expected);
  });
});

describe('the stand-in takes what the platform takes', () => {
  test.each([
    { given: 'return undefined', expected: null },
    { given: 'return { a: undefined, b: [undefined, 1] }', expected: { b: [null, 1] } },
    { given: 'return sheet.getRange("A2:B9").getA1Notation()', expected: 'A2:B9' },
    { given: 'return sheet.getRange("B:B").getNumRows()', expected: 1000 },
    { given: 'return sheet.getRange(2, 3, 4, 5).getLastColumn()', expected: 7 },
    { given: 'return sheet.getRange("A1").getValue()', expected: '' },
    { given: 'return sheet.getLastRow()', expected: 0 },
    { given: 'return ss.getSheetByName("No such")', expected: null },
    { given: 'return ss.getRangeByName("NO_SUCH")', expected: null },
    {
      given: 'return [new Error("x") instanceof Error, [] instanceof Array]',
      expected: [true, true],
    },
    {
      given: 'try { sheet.nothing() } catch (error) { return error instanceof Error }',
      expected: true,
    },
    { given: 'return sheet.getRange("A1:B1").getValues() instanceof Array', expected: true },
    { given: 'return Session.getActiveUser().getEmail()', expected: '' },
    { given: 'return Session.getScriptTimeZone()', expected: 'Etc/UTC' },
    { given: 'return ss.getSpreadsheetTimeZone()', expected: 'America/New_York' },
    {
      given:
        'return Utilities.formatDate(new Date(0), "America/New_York", "EEE yyyy-MM-dd\'T\'HH:mm:ss a")',
      expected: 'Wed 1969-12-31T19:00:00 PM',
    },
    { given: 'return Utilities.getUuid().length', expected: 36 },
  ])('$given', async ({ given, expected }) => {
    const { value } = await openFixture();
    expect(await value(given)).toEqual(expected);
  });
});

describe('what setValue stores', () => {
  test.each([
    { given: '"=1+1"', shown: 2, formula: '=1+1' },
    { given: '"\'=1+1"', shown: '=1+1', formula: '' },
    { given: '"\'007"', shown: '007', formula: '' },
    { given: '"007"', shown: 7, formula: '' },
    { given: '"12%"', shown: 0.12, formula: '' },
    { given: '"true"', shown: true, formula: '' },
    { given: '"plain"', shown: 'plain', formula: '' },
    { given: '-5', shown: -5, formula: '' },
    { given: 'false', shown: false, formula: '' },
    { given: 'null', shown: '', formula: '' },
    { given: 'NaN', shown: '#NUM!', formula: '' },
  ])('$given', async ({ given, shown, formula }) => {
    const { value } = await openFixture();
    const read = await value(
      `const r = sheet.getRange("A1"); r.setValue(9); r.setValue(${given}); return [r.getValue(), r.getFormula()]`,
    );
    expect(read).toEqual([shown, formula]);
  });

  test('text cells keep numbers and dates as text', async () => {
    const { value } = await openFixture();
    const read = await value(
      'const r = sheet.getRange("A1:A2"); r.setNumberFormat("@"); r.setValues([["007"], ["1/2"]]); return r.getValues()',
    );
    expect(read).toEqual([['007'], ['1/2']]);
  });

  test('a date comes back as the same instant, made in the run that reads it', async () => {
    const { value } = await openFixture();
    await value('sheet.getRange("A1").setValue(new Date(Date.UTC(2026, 2, 8, 7, 30)))');
    const read = await value(
      'const d = sheet.getRange("A1").getValue(); return [d instanceof Date, d.toISOString(), sheet.getRange("A1").getDisplayValue()]',
    );
    // 2026-03-08 is the day New York's clocks go forward.
    expect(read).toEqual([true, '2026-03-08T07:30:00.000Z', '3/8/2026 3:30:00']);
  });
});

describe('rules on cells', () => {
  const cases = [
    { rule: 'requireValueInList(["a", "b"])', good: '"a"', bad: '"c"' },
    { rule: 'requireValueInRange(sheet.getRange("D1:D2"))', good: '"x"', bad: '"z"' },
    { rule: 'requireNumberBetween(1, 5)', good: '5', bad: '6' },
    { rule: 'requireNumberGreaterThan(0)', good: '0.1', bad: '0' },
    { rule: 'requireDate()', good: 'new Date(0)', bad: '"soon"' },
    {
      rule: 'requireDateAfter(new Date(0))',
      good: 'new Date(86400000)',
      bad: 'new Date(-86400000)',
    },
    { rule: 'requireCheckbox()', good: 'true', bad: '"yes"' },
  ];

  test.each(cases)('$rule rejects, and only when told to', async ({ rule, good, bad }) => {
    const { value, failure } = await openFixture();
    await value('sheet.getRange("D1:D2").setValues([["x"], ["y"]])');
    const set = (allow: boolean) =>
      `sheet.getRange("B2:B9").setDataValidation(${RULE}.${rule}.setAllowInvalid(${allow}).build());`;
    await value(`${set(false)} sheet.getRange("B3").setValue(${good}).clearContent();`);
    expect(await failure(`sheet.getRange("A3:B3").setValues([[1, ${bad}]])`)).toBe(
      'The data you entered in cell B3 violates the data validation rules set on this cell.',
    );
    expect(await value('return sheet.getRange("A3").getValue()')).toBe('');
    await value(`${set(true)} sheet.getRange("B3").setValue(${bad});`);
  });

  test('clearDataValidations frees the cleared cells and no others', async () => {
    const { value, failure } = await openFixture();
    await value(
      `sheet.getRange("A1:A9").setDataValidation(${RULE}.requireNumberLessThan(3).setAllowInvalid(false).build()); sheet.getRange("A4:A5").clearDataValidations(); sheet.getRange("A4:A5").setValue(7);`,
    );
    expect(await failure('sheet.getRange("A6").setValue(7)')).toContain('cell A6 violates');
  });

  test('a builder keeps what was set on it step by step', async () => {
    const { value } = await openFixture();
    const read = await value(
      `const b = ${RULE}; b.requireValueInList(["a", "b"], true); b.setAllowInvalid(false); b.setHelpText("pick"); sheet.getRange("A1").setDataValidation(b.build()); const r = sheet.getRange("A1").getDataValidation(); return [r.getCriteriaType(), r.getCriteriaValues(), r.getAllowInvalid(), r.getHelpText()]`,
    );
    expect(read).toEqual(['VALUE_IN_LIST', [['a', 'b'], true], false, 'pick']);
  });
});
