import { describe, expect, test } from 'vitest';
import { openFixture, writeFixture } from './fixture.ts';

/** Writes beside an edit what its trigger was told. */
const ON_EDIT = `
function onEdit(event) {
  const { range, value, authMode } = event;
  range.offset(0, range.getNumColumns(), 1, 1).setValue(
    [range.getSheet().getName(), range.getA1Notation(), value, authMode === ScriptApp.AuthMode.LIMITED].join(' '),
  );
}
`;
const SET = 'sheet.mutation.set-range-values';

function openEdited(code = ON_EDIT) {
  return openFixture({ dist: writeFixture(code) });
}

describe('the edit trigger', () => {
  test('is told where and what a person typed, and its own writing starts none', async () => {
    const { host, value } = await openEdited();
    host.type('Sheet1', 'B2', '12');
    await value('return 1');
    expect(host.values('Sheet1', 'B2:D2')).toEqual([[12, 'Sheet1 B2 12 true', '']]);
  });

  test('is told a tick of a window as TRUE, and of several cells no value', async () => {
    const { host, value } = await openEdited();
    const change = (cellValue: object) =>
      host.apply({
        madeAt: host.snapshot().sequence,
        id: SET,
        params: { subUnitId: '0', cellValue },
        origin: 'w1',
      });
    change({ 0: { 0: { v: 1, t: 3 } } });
    change({ 3: { 0: { v: 1, t: 2 }, 1: { v: 2, t: 2 } }, 4: { 0: null } });
    await value('return 1');
    expect(host.values('Sheet1', 'B1')).toEqual([['Sheet1 A1 TRUE true']]);
    expect(host.values('Sheet1', 'C4')).toEqual([['Sheet1 A4:B5  true']]);
  });

  test('does not run for looks, for a script, and for an add-on without one', async () => {
    const { host, value } = await openEdited();
    host.apply({
      madeAt: host.snapshot().sequence,
      id: SET,
      params: { subUnitId: '0', cellValue: { 0: { 0: { s: null } } } },
      origin: 'w1',
    });
    await value('sheet.getRange("A5").setValue("by script")');
    expect(await value('return sheet.getLastColumn()')).toBe(1);

    const plain = await openFixture();
    plain.host.type('Sheet1', 'A1', 'x');
    expect(await plain.value('return sheet.getLastColumn()')).toBe(1);
  });

  test('may not show anything, and no more than two wait', async () => {
    const { host, value } = await openEdited(
      'function onEdit() { SpreadsheetApp.getUi().alert("no"); }',
    );
    const lines: string[] = [];
    host.listen((event) => {
      if (event.kind === 'log') lines.push(event.text);
    });
    for (const cell of ['A1', 'A2', 'A3', 'A4', 'A5']) host.type('Sheet1', cell, 'x');
    await value('return 1');
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/^onEdit: You do not have permission to call Ui\.alert/);
  });

  test('what still waits when the workbook closes does not run', async () => {
    const { host } = await openEdited();
    host.type('Sheet1', 'A1', 'x');
    host.type('Sheet1', 'A2', 'x');
    const from = { window: 'w1', selection: { sheet: 'Sheet1', range: 'A1' } };
    const late = host.call('onEdit', [], from);
    await host.close();
    expect(await late).toEqual({ kind: 'failure', message: 'The workbook was closed' });
  });
});

describe('Range.sort', () => {
  test('takes rows whole, keeps those alike in order and puts blanks last', async () => {
    const { host, value } = await openFixture();
    await value(`
      sheet.getRange('A1:C5').setValues([[2, 'b', true], ['', 'e', false], [1, 'a', false], [2, 'c', ''], ['x', 'd', true]]);
      sheet.getRange('B3').setNumberFormat('@');
      sheet.getRange('A1:C5').sort({ column: 1, ascending: true });
    `);
    expect(host.values('Sheet1', 'A1:C5')).toEqual([
      [1, 'a', false],
      [2, 'b', true],
      [2, 'c', ''],
      ['x', 'd', true],
      ['', 'e', false],
    ]);
    expect(await value('return sheet.getRange("B1:B3").getNumberFormats().flat()')).toEqual([
      '@',
      'General',
      'General',
    ]);
  });

  test('goes by several columns, either way, and refuses formulas and nonsense', async () => {
    const { host, value, failure } = await openFixture();
    await value(`
      sheet.getRange('A1:B4').setValues([[1, 1], [2, 1], [1, 2], [2, 2]]);
      sheet.getRange('A1:B4').sort([2, { column: 1, ascending: false }]);
    `);
    expect(host.values('Sheet1', 'A1:B4')).toEqual([
      [2, 1],
      [1, 1],
      [2, 2],
      [1, 2],
    ]);
    expect(await failure('sheet.getRange("A1:B4").sort("A")')).toMatch(/parameters|match/i);
    expect(
      await failure('sheet.getRange("A1").setValue("=B1"); sheet.getRange("A1:B4").sort(2)'),
    ).toBe('The stand-in sorts no formulas');
  });
});

test('after a change that no formula can see, windows still hear that nothing is left to calculate', async () => {
  const { host, value } = await openFixture();
  const heard: number[] = [];
  host.listen((event) => {
    if (event.kind === 'calculated') heard.push(event.sequence);
  });
  await value(
    'sheet.getRange("A1").setValue(1); sheet.getLastRow(); sheet.setRowHeights(1, 2, 40);',
  );
  await host.settled();
  expect(heard[heard.length - 1]).toBe(host.snapshot().sequence);
});
