import { describe, expect, test } from 'vitest';
import { runSheetCells } from '../../../shared/paper/runSheet/runSheetCells.ts';
import { runSheetDocument } from '../../../shared/paper/runSheet/runSheetDocument.ts';
import type { RunSheetCells, TabBox } from '../../../shared/paper/runSheet/tab/tabTypes.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';

function cellsOf(order = '2041', changes: DemoChanges = {}): RunSheetCells {
  const plan = planOrder(demoBook(changes), order);
  if (plan.kind === 'missing') throw new Error(plan.missing.map((gap) => gap.text).join('; '));
  return runSheetCells(runSheetDocument(plan, { runId: '2041-1', date: '2026-12-01' }));
}

function placesIn({ row, column, rows, columns }: TabBox): readonly string[] {
  return Array.from(
    { length: rows * columns },
    (_, index) => `${row + Math.floor(index / columns)},${column + (index % columns)}`,
  );
}

const ONE_ROUND_EACH = withChange(DEMO.orders, 0, { moldsInUse: 1, quantity: 90 });

describe('runSheetCells', () => {
  test.each([
    { what: 'three rounds', cells: () => cellsOf() },
    { what: 'a two-piece mold', cells: () => cellsOf('2042') },
    { what: 'one layer', cells: () => cellsOf('2043') },
    { what: 'many rounds', cells: () => cellsOf('2041', { orders: ONE_ROUND_EACH }) },
  ])(
    '$what: every row is as wide as the tab, merges and boxes stay inside and never overlap',
    ({ cells }) => {
      const { rows, columnWidths, merges, frames, ticks } = cells();
      for (const row of rows) expect(row.cells).toHaveLength(columnWidths.length);
      for (const box of [...merges, ...frames, ...ticks]) {
        expect(box.row + box.rows - 1).toBeLessThanOrEqual(rows.length);
        expect(box.column + box.columns - 1).toBeLessThanOrEqual(columnWidths.length);
      }
      const taken = [...merges, ...ticks].flatMap(placesIn);
      expect(new Set(taken).size).toBe(taken.length);
    },
  );

  test('every tick box is an unticked cell, and every unticked cell is a tick box', () => {
    const { rows, ticks } = cellsOf();
    const boxes = new Set(ticks.flatMap(placesIn));
    const empty = rows.flatMap(({ cells }, row) =>
      cells.flatMap(({ value }, column) => (value === false ? [`${row + 1},${column + 1}`] : [])),
    );
    expect(new Set(empty)).toEqual(boxes);
    expect(boxes.size).toBe(14 + 20 + 3); // cups of each line, checklists, tear test
  });

  test('no text hides behind a merge', () => {
    const { rows, merges } = cellsOf();
    for (const merge of merges)
      for (const place of placesIn(merge).slice(1)) {
        const [row = 0, column = 0] = place.split(',').map(Number);
        expect(rows[row - 1]?.cells[column - 1]?.value).toBe('');
      }
  });

  test('says everything that the document says', () => {
    const plan = planOrder(demoBook(), '2041');
    if (plan.kind === 'missing') throw new Error('no plan');
    const document = runSheetDocument(plan, { runId: '2041-1', date: '2026-12-01' });
    const texts = new Set(
      runSheetCells(document).rows.flatMap(({ cells }) => cells.map(({ value }) => value)),
    );
    for (const section of document.sections) {
      expect(texts).toContain(section.heading);
      for (const block of section.blocks) {
        if (block.kind === 'lines') for (const line of block.lines) expect(texts).toContain(line);
        if (block.kind === 'checklist')
          for (const item of [block.name, ...block.items]) expect(texts).toContain(item);
        if (block.kind === 'table')
          for (const heading of block.headings) expect(texts).toContain(heading);
        if (block.kind === 'facts')
          for (const { label } of block.facts) expect(texts).toContain(label);
      }
    }
  });

  test('fits a portrait page: columns of 732 px at most', () => {
    const { columnWidths } = cellsOf();
    expect(columnWidths.reduce((sum, width) => sum + width, 0)).toBeLessThanOrEqual(732);
  });
});
