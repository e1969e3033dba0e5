import { describe, expect, test } from 'vitest';
import type { HostEvent } from '../../../workbench/host/Host.ts';
import { openFixture, writeFixture } from './fixture.ts';

describe('what a sheet function is given', () => {
  test.each([
    { given: '=LOOKS(A1)', expected: 'number 5', why: 'one cell is its value' },
    { given: '=LOOKS(A1:A1)', expected: 'number 5', why: 'so is a range of one cell' },
    { given: '=LOOKS(A1:B1)', expected: 'rows [[5,"text"]]', why: 'a row is rows of one' },
    { given: '=LOOKS(A1:A2)', expected: 'rows [[5],[""]]', why: 'a column is rows, blanks are ""' },
    { given: '=LOOKS(Z99)', expected: 'string ', why: 'a lone blank cell is ""' },
    { given: '=LOOKS(C1)', expected: 'boolean true', why: 'truth values stay' },
    { given: '=LOOKS(D1)', expected: 'string #DIV/0!', why: 'an error is its name' },
    {
      given: '=LOOKS(E1)',
      expected: 'date 2026-05-06T04:00:00.000Z',
      why: 'a date is a Date of its own scope',
    },
    {
      given: '=LOOKS(E1:F1)',
      expected: 'rows [["2026-05-06T04:00:00.000Z",0.5]]',
      why: 'also in a range',
    },
    { given: '=LOOKS()', expected: 'undefined undefined', why: 'a missing argument is undefined' },
    { given: '=READS()', expected: 'Sheet1', why: 'it may read the workbook' },
  ])('$given: $why', async ({ given, expected }) => {
    const { host } = await openFixture();
    for (const [cell, text] of [
      ['A1', '5'],
      ['B1', 'text'],
      ['C1', 'TRUE'],
      ['D1', '=1/0'],
      ['E1', '2026-05-06'],
      ['F1', '0.5'],
      ['H5', given],
    ] as const) {
      host.type('Sheet1', cell, text);
    }
    await host.settled();
    expect(host.values('Sheet1', 'H5')).toEqual([[expected]]);
  });
});

describe('how a sheet function fails', () => {
  test('a thrown sentence is the message of its cell, until the cell is right', async () => {
    const { host } = await openFixture();
    host.type('Sheet1', 'A1', '=DOUBLE("bad")');
    await host.settled();
    expect(host.values('Sheet1', 'A1')).toEqual([['#ERROR!']]);
    expect(host.cellMessage('Sheet1', 'A1')).toBe('input must be a number, got "bad"');
    host.type('Sheet1', 'A1', '=DOUBLE(4)');
    await host.settled();
    expect(host.values('Sheet1', 'A1')).toEqual([[8]]);
    expect(host.cellMessage('Sheet1', 'A1')).toBeUndefined();
  });

  test('writing is not permitted', async () => {
    const { host } = await openFixture();
    host.type('Sheet1', 'A1', '=WRITES()');
    await host.settled();
    expect(host.cellMessage('Sheet1', 'A1')).toBe('You do not have permission to call setValue');
    expect(host.values('Sheet1', 'Z1')).toEqual([['']]);
  });

  test('a spill stops at filled cells and goes on when they are cleared', async () => {
    const { host } = await openFixture();
    host.type('Sheet1', 'A1', '=DOUBLE(C1:C3)');
    host.type('Sheet1', 'C2', '7');
    host.type('Sheet1', 'A3', 'mine');
    await host.settled();
    expect(host.values('Sheet1', 'A1:A3')).toEqual([['#SPILL!'], [''], ['mine']]);
    expect(host.cellMessage('Sheet1', 'A1')).toBe(
      'Array result was not expanded because it would overwrite data.',
    );
    host.type('Sheet1', 'A3', '');
    await host.settled();
    expect(host.values('Sheet1', 'A1:A3')).toEqual([[''], [14], ['']]);
  });

  test('only functions with @customfunction in their doc comment work in cells', async () => {
    const { host } = await openFixture();
    host.type('Sheet1', 'A1', '=DOUBLE(2)+ARRAYFORMULA(DOUBLE(1))');
    await host.settled();
    expect(host.values('Sheet1', 'A1')).toEqual([[6]]);
  });
});

describe('open ranges', () => {
  test('reach to the end of the sheet they point to, spills included', async () => {
    const { host, value } = await openFixture();
    host.type('Sheet1', 'A1', 'heading');
    for (const row of [2, 3, 4]) host.type('Sheet1', `A${row}`, String(row));
    host.type('Sheet1', 'B2', '=ARRAYFORMULA(DOUBLE(A2:A))');
    host.type('Sheet1', 'C1', '=SUM(B2:B)');
    host.type('Sheet1', 'C2', '=SUM(A2:B)');
    await host.settled();
    expect(host.values('Sheet1', 'C1:C2')).toEqual([[18], [27]]);
    expect(await value('return [sheet.getRange("B2").getFormula(), sheet.getLastRow()]')).toEqual([
      '=ARRAYFORMULA(DOUBLE(A2:A))',
      1000,
    ]);
  });

  test('move with inserted and deleted rows and stay open', async () => {
    const { host, value } = await openFixture();
    host.type('Sheet1', 'C1', '=SUM(A2:A)');
    host.type('Sheet1', 'A2', '5');
    await value('sheet.insertRowsBefore(1, 2); sheet.getRange("A6").setValue(10)');
    expect(
      await value('return [sheet.getRange("C3").getFormula(), sheet.getRange("C3").getValue()]'),
    ).toEqual(['=SUM(A4:A)', 15]);
    await value('sheet.deleteRows(1, 1)');
    expect(await value('return sheet.getRange("C2").getFormula()')).toBe('=SUM(A3:A)');
  });

  test('follow a sheet that is not the active one', async () => {
    const { host, value } = await openFixture();
    await value(`
      const other = ss.insertSheet('Other');
      other.getRange('B1').setFormula('=SUM(A2:A)');
      sheet.getRange('A1').setFormula('=SUM(Other!A2:A)');
      other.getRange('A2').setValue(3);
      other.insertRowsBefore(1, 2);
      ss.setActiveSheet(sheet);
      sheet.insertRowsBefore(5, 1);
      other.deleteRows(1, 1);
    `);
    const read =
      'return [ss.getSheetByName("Other").getRange("B2").getFormula(), sheet.getRange("A1").getFormula()]';
    expect(await value(read)).toEqual(['=SUM(A3:A)', '=SUM(Other!A3:A)']);
    expect(host.values('Sheet1', 'A1')).toEqual([[3]]);
  });
});

describe('a simple trigger', () => {
  test.each([
    { given: 'SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutput("x"))', shown: 0 },
    { given: 'SpreadsheetApp.getUi().alert("x")', shown: 0 },
  ])('may not run $given', async ({ given, shown }) => {
    const more = `function onOpen() { try { ${given} } catch (error) { SpreadsheetApp.getUi().createMenu(error.message).addToUi(); } }`;
    const events: HostEvent[] = [];
    const { host } = await openFixture({ dist: writeFixture(more) });
    host.listen((event) => events.push(event));
    expect(host.menus()[0]?.title).toContain(
      'Required permissions: https://www.googleapis.com/auth/script.container.ui',
    );
    expect(events.filter((event) => event.kind === 'ui')).toHaveLength(shown);
  });

  test('that fails does not keep the workbook closed', async () => {
    const { host, value } = await openFixture({
      dist: writeFixture('function onOpen() { throw new Error("no menu"); }'),
    });
    expect(host.menus()).toEqual([]);
    expect(await value('return 1')).toBe(1);
  });
});
