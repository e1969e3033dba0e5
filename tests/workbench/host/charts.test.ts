import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Host } from '../../../workbench/host/Host.ts';
import { folder, openFixture } from './fixture.ts';

const MAKE = `
  const at = (a1) => sheet.getRange(a1);
  at('A1:C3').setValues([['Month', 'Sales', 'Margin'], ['2026-10', 120, 40], ['2026-11', 90, -5]]);
  sheet.insertChart(sheet.newChart().asColumnChart().setTitle('Sales').setNumHeaders(1)
    .addRange(at('A1:A3')).addRange(at('C1:C3')).setOption('width', 700).setPosition(5, 1, 0, 0).build());
`;

function chartsOf(host: Host): unknown {
  return host.snapshot().values.find(({ id }) => id === 'workbench.charts')?.params;
}

const column = (index: number, startRow: number, endRow: number) => ({
  sheet: expect.any(String),
  box: { startRow, startColumn: index, endRow, endColumn: index },
});

describe('charts of the stand-in', () => {
  test('stand on their sheet with title and ranges, which move with the rows', async () => {
    const { host, value } = await openFixture();
    await value(MAKE);
    expect(chartsOf(host)).toEqual([
      {
        id: 1,
        sheet: expect.any(String),
        title: 'Sales',
        headers: 1,
        ranges: [column(0, 0, 2), column(2, 0, 2)],
      },
    ]);
    await value('sheet.insertRowsBefore(1, 2)');
    expect(chartsOf(host)).toMatchObject([{ ranges: [column(0, 2, 4), column(2, 2, 4)] }]);
  });

  test('are of lines where they were made so', async () => {
    const { host, value } = await openFixture();
    await value(MAKE.replace('asColumnChart', 'asLineChart'));
    expect(chartsOf(host)).toMatchObject([{ id: 1, title: 'Sales', kind: 'lines' }]);
  });

  test('are removed one by one, and go with their sheet', async () => {
    const { host, value } = await openFixture();
    await value(MAKE);
    await value(MAKE);
    await value('sheet.removeChart(sheet.getCharts()[0])');
    expect(chartsOf(host)).toMatchObject([{ id: 2 }]);
    await value('ss.insertSheet("Other"); ss.deleteSheet(sheet)');
    expect(chartsOf(host)).toEqual([]);
  });

  test('are kept in the file', async () => {
    const book = join(folder(), 'charts.xlsx');
    const { host, value } = await openFixture({ book });
    await value(MAKE);
    const before = chartsOf(host);
    await host.save();
    const again = await openFixture({ book });
    expect(chartsOf(again.host)).toEqual(before);
  });

  test.each([
    [
      'sheet.newChart().asPieChart()',
      'EmbeddedChartBuilder.asPieChart is not part of the workbench’s stand-in',
    ],
    [
      'sheet.newChart().asColumnChart().setOption("colors", 3)',
      'the chart option colors is not part of the workbench’s stand-in',
    ],
    [
      'sheet.newChart().asColumnChart().setPosition(0, 1, 0, 0)',
      'The chart must stand at a row and a column of the sheet',
    ],
    [
      'sheet.newChart().asColumnChart().addRange("A1")',
      'The parameters (string) don’t match the method signature.',
    ],
  ])('refuse %s', async (code, message) => {
    const { failure } = await openFixture();
    expect(await failure(code)).toBe(message.replaceAll('’', "'"));
  });
});
