import type { Edit } from './callQueue.ts';
import { cellContent, cellText, isDateMark, typedCell } from './cellContent.ts';
import type { FunctionCalls } from './functionCalls.ts';
import type { Host } from './Host.ts';
import type { HostState } from './hostState.ts';
import { typedInLocale } from './locale/formulaFromScript.ts';
import { OPERATION_IDS } from './operationIds.ts';
import { parseA1 } from './parseA1.ts';
import { firstBroken } from './platform/checkValidation.ts';
import { cellAt, patternAt, sheetNamed, sheetSize, writeCells } from './sheetNamed.ts';

interface CellAccess
  extends Pick<Host, 'snapshot' | 'values' | 'texts' | 'cellMessage' | 'sheets'> {
  /** Typed as a user would; what a trigger is told of it. */
  readonly type: (...args: Parameters<Host['type']>) => Edit;
}

/** The plain reads and the typing that tests, the command line and the page's server use. */
export function cellAccess(
  state: HostState,
  functions: FunctionCalls,
  { zone, locale }: { readonly zone: string; readonly locale: string },
): CellAccess {
  const { engine } = state;

  function locate(sheet: string, range: string) {
    const found = sheetNamed(engine, sheet);
    if (!found) throw new Error(`there is no sheet ${sheet}`);
    const box = parseA1(range, sheetSize(found));
    if (!box) throw new Error(`there is no range ${range} in ${sheet}`);
    return { sheet: found, box };
  }

  function read<Value>(sheet: string, range: string, cell: (row: number, column: number) => Value) {
    const { box } = locate(sheet, range);
    return Array.from({ length: box.endRow - box.startRow + 1 }, (_row, row) =>
      Array.from({ length: box.endColumn - box.startColumn + 1 }, (_column, column) =>
        cell(box.startRow + row, box.startColumn + column),
      ),
    );
  }

  return {
    snapshot: () => ({
      sequence: state.sequence(),
      workbook: engine.save(),
      values: [
        ...engine.results(),
        { id: OPERATION_IDS.charts, params: state.platformState().charts },
        { id: OPERATION_IDS.protections, params: state.platformState().protections },
      ],
    }),
    sheets: () => engine.workbook.getSheets().map((sheet) => sheet.getName()),
    values: (sheet, range) =>
      read(sheet, range, (row, column) => {
        const { sheet: found } = locate(sheet, 'A1');
        const pattern = patternAt(engine, found, row, column);
        const content = cellContent(cellAt(engine, found, row, column), pattern, zone);
        return isDateMark(content) ? new Date(content.$date) : content;
      }),
    texts: (sheet, range) =>
      read(sheet, range, (row, column) => {
        const { sheet: found } = locate(sheet, 'A1');
        const pattern = patternAt(engine, found, row, column);
        return cellText(cellAt(engine, found, row, column), pattern);
      }),
    type: (sheet, cell, text) => {
      const { sheet: found, box } = locate(sheet, cell);
      const pattern = patternAt(engine, found, box.startRow, box.startColumn);
      const changes = {
        [box.startRow]: { [box.startColumn]: typedCell(typedInLocale(text, locale), pattern) },
      };
      const broken = firstBroken(engine, found.getSheetId(), changes);
      if (broken) throw new Error(`the value in ${broken} is not one its rule allows`);
      writeCells(engine, found.getSheetId(), changes);
      return { sheet: found.getSheetId(), box, value: text };
    },
    cellMessage: (sheet, cell) => {
      const { sheet: found, box } = locate(sheet, cell);
      const site = { sheet: found.getSheetId(), row: box.startRow, column: box.startColumn };
      const shown = cellAt(engine, found, box.startRow, box.startColumn)?.v;
      if (shown === '#SPILL!') return SPILL_MESSAGE;
      return shown === '#ERROR!' ? functions.message(site) : undefined;
    },
  };
}

const SPILL_MESSAGE = 'Array result was not expanded because it would overwrite data.';
