import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { topLevelFunctions } from '../../../workbench/host/addOn.ts';
import { closeOpenRanges, reopenRanges } from '../../../workbench/host/closeOpenRanges.ts';
import {
  cellName,
  columnName,
  columnNumber,
  formatA1,
  parseA1,
  splitSheet,
} from '../../../workbench/host/parseA1.ts';
import { instantToSerial, serialToInstant } from '../../../workbench/host/parseDate.ts';
import { formulaFromFile, formulaToFile } from '../../../workbench/host/xlsx/formulaToFile.ts';

const SIZE = { rows: 100, columns: 30 };

describe('A1 notation', () => {
  test.each([
    { given: 'B7', expected: [6, 1, 6, 1] },
    { given: '$B$7:D9', expected: [6, 1, 8, 3] },
    { given: 'B:D', expected: [0, 1, 99, 3] },
    { given: '2:5', expected: [1, 0, 4, 29] },
    { given: 'A2:L', expected: [1, 0, 99, 11] },
    { given: 'aa3', expected: [2, 26, 2, 26] },
  ])('$given', ({ given, expected }) => {
    const box = parseA1(given, SIZE);
    expect(box && [box.startRow, box.startColumn, box.endRow, box.endColumn]).toEqual(expected);
  });

  test.each(['', 'B', '7', 'A0', 'A101', 'AE1', 'C3:B2', 'A1:', 'Sheet!A1'])(
    '%s is no range',
    (given) => {
      expect(parseA1(given, SIZE)).toBeUndefined();
    },
  );

  // ZZZ, the last name of three letters, is column 18,278.
  test('columns and cells survive the way there and back', () => {
    fc.assert(
      fc.property(fc.nat(18_277), fc.nat(99), (column, row) => {
        expect(columnNumber(columnName(column))).toBe(column);
        const box = { startRow: row, endRow: row, startColumn: column, endColumn: column };
        expect(parseA1(cellName(row, column), { rows: 100, columns: 20_001 })).toEqual(box);
        expect(formatA1(box)).toBe(cellName(row, column));
      }),
    );
  });

  test.each([
    { given: "'It''s ours'!A1:B", sheet: "It's ours", cells: 'A1:B' },
    { given: 'Orders!C3', sheet: 'Orders', cells: 'C3' },
    { given: 'C3', sheet: undefined, cells: 'C3' },
  ])('$given names its sheet', ({ given, sheet, cells }) => {
    expect(splitSheet(given)).toEqual(sheet === undefined ? { cells } : { sheet, cells });
  });
});

describe('open ranges', () => {
  test.each([
    { open: '=SUM(A2:A)', closed: '=SUM(A2:A1048576)' },
    { open: '=F($A$2:$L,B1:B)', closed: '=F($A$2:$L1048576,B1:B1048576)' },
    { open: '=\'A2:A\'!A2:A&"A2:A"', closed: '=\'A2:A\'!A2:A1048576&"A2:A"' },
    { open: '=Orders!A2:A', closed: '=Orders!A2:A1048576' },
    { open: '=SUM(A:A)+A2:B9+LOG10(2)', closed: '=SUM(A:A)+A2:B9+LOG10(2)' },
  ])('$open', ({ open, closed }) => {
    expect(closeOpenRanges(open)).toBe(closed);
    expect(reopenRanges(closed)).toBe(open);
  });

  test('an end that rows moved a little is still open', () => {
    expect(reopenRanges('=SUM(A4:A1048578)')).toBe('=SUM(A4:A)');
    expect(reopenRanges('=SUM(A4:A999999)')).toBe('=SUM(A4:A999999)');
  });
});

describe('formulas in files', () => {
  test.each([
    { typed: '=SUM(A1:B2)', file: 'SUM(A1:B2)' },
    { typed: '=SORT(UNIQUE(A2:A))', file: '_xlfn._xlws.SORT(_xlfn.UNIQUE(A2:A1048576))' },
    {
      typed: '=LET(a,1,b,a+1,a*b)',
      file: '_xlfn.LET(_xlpm.a,1,_xlpm.b,_xlpm.a+1,_xlpm.a*_xlpm.b)',
    },
    { typed: '=LET(a,"a,LET(",a)', file: '_xlfn.LET(_xlpm.a,"a,LET(",_xlpm.a)' },
    {
      typed: '=MAP(A1:A3,LAMBDA(x,x*2))',
      file: '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2))',
    },
    { typed: '=POUR_BATCH(A2:A,"US")', file: 'POUR_BATCH(A2:A1048576,"US")' },
  ])('$typed', ({ typed, file }) => {
    expect(formulaToFile(typed)).toBe(file);
    expect(formulaFromFile(file)).toBe(typed);
  });
});

describe('dates', () => {
  test.each([
    { zone: 'Etc/UTC', serial: 46_000, instant: '2025-12-09T00:00:00.000Z' },
    { zone: 'America/New_York', serial: 46_000.5, instant: '2025-12-09T17:00:00.000Z' },
    { zone: 'America/Denver', serial: 46_204.25, instant: '2026-07-01T12:00:00.000Z' },
    { zone: 'Asia/Kolkata', serial: 25_569, instant: '1969-12-31T18:30:00.000Z' },
  ])('$serial in $zone', ({ zone, serial, instant }) => {
    expect(new Date(serialToInstant(serial, zone)).toISOString()).toBe(instant);
    // A day is 86,400,000 ms, so a serial holds a millisecond to 1e-8.
    expect(instantToSerial(Date.parse(instant), zone)).toBeNear(serial, { absolute: 1e-8 });
  });

  test('instants survive the way there and back, also next to clock changes', () => {
    const zones = fc.constantFrom(
      'America/New_York',
      'Europe/Berlin',
      'Australia/Lord_Howe',
      'Etc/UTC',
    );
    const instants = fc.integer({ min: Date.UTC(2000, 0), max: Date.UTC(2040, 0) });
    fc.assert(
      fc.property(instants, zones, (instant, zone) => {
        const serial = instantToSerial(instant, zone);
        const back = serialToInstant(serial, zone);
        // In the hour that is repeated in autumn one wall clock means two instants.
        expect(instantToSerial(back, zone)).toBeNear(serial, { absolute: 1e-8 });
      }),
    );
  });
});

test('functions of the add-on are its top-level declarations', () => {
  const code = `/** Adds. @customfunction */
function ADD(a) { function inner() {} return inner(a); }
/* @customfunction in no doc comment */
function plain() {}
/** A doc comment of something else. @customfunction */
var made = function hidden() {};
function after() {}`;
  expect(topLevelFunctions(code)).toEqual({
    functions: ['ADD', 'plain', 'after'],
    sheetFunctions: ['ADD'],
  });
});
