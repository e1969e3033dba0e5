import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { Workbook } from '@cj-tech-master/excelts';
import { describe, expect, test } from 'vitest';
import type { HostEvent } from '../../../workbench/host/Host.ts';
import { folder, openFixture } from './fixture.ts';

/** One of everything a file has to keep. */
const BUILD = `
  const s = ss.insertSheet('Order list');
  s.getRange('A1:C1').setValues([['No', 'Due', 'Done']]).setFontWeight('bold').setBackground('#ffeecc').setFontColor('#112233')
    .setHorizontalAlignment('center').setVerticalAlignment('middle').setWrap(true).setFontSize(12).setFontFamily('Courier New').setNote('heading');
  s.getRange('A2:A5').setValues([[1], [2.5], ['text'], ["'=not a formula"]]);
  s.getRange('B2').setValue(new Date(Date.UTC(2026, 4, 6, 12, 30))).setNumberFormat('yyyy-mm-dd hh:mm');
  s.getRange('B3').setValue('3/4/2026');
  s.getRange('C2:C4').insertCheckboxes(); s.getRange('C3').setValue(true);
  const rule = () => SpreadsheetApp.newDataValidation();
  s.getRange('D2:D5').setDataValidation(rule().requireValueInList(['a', 'b'], true).setAllowInvalid(false).setHelpText('pick one').build());
  s.getRange('E2:E').setDataValidation(rule().requireNumberBetween(0, 5).setAllowInvalid(false).build());
  s.getRange('F2:F').setDataValidation(rule().requireValueInRange(s.getRange('A2:A4'), true).setAllowInvalid(true).build());
  s.getRange('G2:G').setDataValidation(rule().requireDateAfter(new Date(Date.UTC(2026, 0, 1, 5))).setAllowInvalid(false).build());
  s.getRange('H2').setDataValidation(rule().requireValueInList(Array.from({ length: 60 }, (_, i) => 'long item ' + i)).setAllowInvalid(false).build());
  s.setFrozenRows(1); s.setFrozenColumns(1); s.setColumnWidth(1, 200); s.setColumnWidths(2, 2, 70); s.setRowHeight(1, 40);
  s.setTabColor('#ff0000'); s.hideColumns(9); s.hideRows(30, 2); s.getRange('M1:N2').merge(); s.setHiddenGridlines(true);
  s.getRange('J2').setFormula('=ARRAYFORMULA(DOUBLE(A2:A3))');
  s.getRange('K1').setFormula('=LET(q,FILTER(A2:A4,A2:A4<>""),COUNTA(q))+COUNT(J2:J)');
  s.getRange('L1').setFormula("=SUM('Order list'!A2:A)&\\" A2:A FILTER(q\\"");
  s.getRange('L2').setFormula('=DOUBLE("bad")'); s.getRange('L3').setFormula('=1/0'); s.getRange('L4').setFormula('=1=1');
  s.getRange('A1:C4').setBorder(true, true, true, true, null, true, '#445566', SpreadsheetApp.BorderStyle.DASHED);
  s.getRange('A1:F5').createFilter(); s.getRange('A1:C1').protect().setDescription('headings').setWarningOnly(true);
  s.addDeveloperMetadata('role', 'orders'); ss.setNamedRange('HEADINGS', s.getRange('A1:C1'));
  PropertiesService.getDocumentProperties().setProperty('version', '3');
  const h = ss.insertSheet('Hidden'); h.appendRow(['=1+1', "'=x", true]); h.deleteColumns(5, 22); h.deleteRows(11, 990); h.hideSheet();
`;

/** What the add-on sees of it. */
const LOOK = `
  const s = ss.getSheetByName('Order list'); const h = ss.getSheetByName('Hidden');
  const rules = ['C3', 'D3', 'E1000', 'F9', 'G9', 'H2', 'I2'].map((at) => s.getRange(at).getDataValidation())
    .map((r) => r && [r.getCriteriaType(), r.getCriteriaValues().map(String), r.getAllowInvalid(), r.getHelpText()]);
  const all = s.getRange('A1:N6');
  return [rules, all.getFormulas(), all.getDisplayValues(), all.getNumberFormats(), all.getBackgrounds(), all.getFontWeights(), all.getFontSizes(), all.getNotes(),
    s.getProtections('RANGE').map((p) => [p.getDescription(), p.isWarningOnly(), p.getRange().getA1Notation()]),
    s.getDeveloperMetadata().map((m) => [m.getKey(), m.getValue()]), ss.getRangeByName('HEADINGS').getA1Notation(),
    PropertiesService.getDocumentProperties().getProperties(), s.getFrozenRows(), s.getFrozenColumns(),
    [1, 2, 3, 4].map((c) => s.getColumnWidth(c)), s.getRowHeight(1), s.getMaxRows(), s.getMaxColumns(), s.getSheetId(), s.getLastRow(), s.getLastColumn(),
    h.isSheetHidden(), h.getMaxRows(), h.getMaxColumns(), h.getDataRange().getValues(), s.getFilter() !== null];
`;

function styled(workbook: unknown): unknown {
  const { styles, sheets } = Object(workbook);
  return JSON.parse(
    JSON.stringify(sheets, (key, value) => {
      // Univer names styles at random; a text mark is not kept apart from text; widths are kept for every column of a run.
      if (key === 's' && typeof value === 'string') return styles[value];
      return value;
    }),
  );
}

describe('a workbook in a file', () => {
  test('reopens as it was', async () => {
    const book = join(folder(), 'book.xlsx');
    const first = await openFixture({ book });
    await first.value(BUILD);
    const seen = await first.value(LOOK);
    const values = first.host.values('Order list', 'A1:N40');
    const look = Object(styled(first.host.snapshot().workbook));
    await first.host.close();
    const second = await openFixture({ book });
    expect(await second.value(LOOK)).toEqual(seen);
    expect(second.host.values('Order list', 'A1:N40')).toEqual(values);
    const again = Object(styled(second.host.snapshot().workbook));
    for (const id of Object.keys(look)) {
      for (const part of ['mergeData', 'freeze', 'tabColor', 'showGridlines', 'hidden', 'name']) {
        expect(again[id][part], part).toEqual(look[id][part]);
      }
    }
    expect(again['1'].columnData['8'].hd).toBe(1);
    expect(again['1'].rowData['30'].hd).toBe(1);
    expect(again['1'].cellData['0']['0'].s).toEqual(look['1'].cellData['0']['0'].s);
    expect(again['1'].cellData['3']['1'].s).toEqual(look['1'].cellData['3']['1'].s);
  });

  test('holds plain formulas and the shown values, for other programs', async () => {
    const book = join(folder(), 'book.xlsx');
    const { host, value } = await openFixture({ book });
    await value(BUILD);
    await host.save();
    const file = new Workbook();
    await file.xlsx.readFile(book);
    const sheet = file.getWorksheet('Order list');
    expect(sheet?.getCell('J2').value).toEqual({
      formula: 'ARRAYFORMULA(DOUBLE(A2:A3))',
      result: 2,
    });
    expect(sheet?.getCell('J3').value).toBe(5);
    expect(sheet?.getCell('K1').formula).toBe(
      '_xlfn.LET(_xlpm.q,_xlfn._xlws.FILTER(A2:A4,A2:A4<>""),COUNTA(_xlpm.q))+COUNT(J2:J1048576)',
    );
    expect(sheet?.getCell('L1').formula).toBe(`SUM('Order list'!A2:A1048576)&" A2:A FILTER(q"`);
    expect(sheet?.getCell('L2').value).toMatchObject({ result: { error: '#VALUE!' } });
    expect(sheet?.getCell('A5').value).toBe('=not a formula');
    expect(file.getWorksheet('_workbench')?.state).toBe('veryHidden');
    expect(sheet?.dataValidations.find('D3')).toMatchObject({
      type: 'list',
      formulae: ['"a,b"'],
      errorStyle: 'stop',
      prompt: 'pick one',
    });
  });

  test('is saved a moment after a change, whole or not at all', async () => {
    const place = folder();
    const book = join(place, 'book.xlsx');
    const { host } = await openFixture({ book });
    const saved = new Promise<HostEvent>((resolve) => {
      host.listen((event) => event.kind === 'saved' && resolve(event));
    });
    host.type('Sheet1', 'A1', '1');
    expect(existsSync(book)).toBe(false);
    expect(await saved).toEqual({ kind: 'saved', file: book });
    expect(readdirSync(place)).toEqual(['book.xlsx']);
    const size = statSync(book).size;
    await host.save();
    expect(statSync(book).size).toBe(size);
  });

  test('that a workbook in memory starts as a copy of is not written', async () => {
    const place = folder();
    const book = join(place, 'book.xlsx');
    const first = await openFixture({ book });
    await first.value(BUILD);
    const seen = await first.value(LOOK);
    await first.host.close();
    const bytes = readFileSync(book);
    const copy = await openFixture({ copyOf: book });
    expect(await copy.value(LOOK)).toEqual(seen);
    copy.host.type('Order list', 'A2', 'changed');
    await copy.host.save();
    await copy.host.close();
    expect(readFileSync(book).equals(bytes)).toBe(true);
    expect(readdirSync(place)).toEqual(['book.xlsx']);
  });

  test('made by another program opens with its values and formulas', async () => {
    const book = join(folder(), 'other.xlsx');
    const file = new Workbook();
    const sheet = file.addWorksheet('Data');
    sheet.getCell('A1').value = 4;
    sheet.getCell('A2').value = { formula: 'A1*2', result: 99 };
    sheet.getCell('A3').value = new Date(Date.UTC(2026, 0, 31));
    sheet.getCell('A3').numFmt = 'yyyy-mm-dd';
    sheet.getCell('B1').value = { richText: [{ text: 'rich ' }, { text: 'text' }] };
    await file.xlsx.writeFile(book);
    const { host } = await openFixture({ book });
    expect(host.sheets()).toEqual(['Data']);
    expect(host.texts('Data', 'A1:B3')).toEqual([
      ['4', 'rich text'],
      ['8', ''],
      ['2026-01-31', ''],
    ]);
  });

  test('that is no workbook is not opened', async () => {
    const book = join(folder(), 'Page.html');
    const { writeFileSync } = await import('node:fs');
    writeFileSync(book, '<p>not a workbook</p>');
    await expect(openFixture({ book })).rejects.toThrow();
  });
});
