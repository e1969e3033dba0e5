import type { ICommandService, Injector, Workbook } from '@univerjs/core';
import {
  type ISetWorksheetRowAutoHeightMutationParams,
  SetWorksheetRowAutoHeightMutation,
} from '@univerjs/sheets';
import { AutoHeightController } from '@univerjs/sheets-ui';

/** Rows from the top whose heights follow their content; below, wrapped text is cut. */
const ROWS = 500;

/** Time after the last change before heights are worked out [ms]. */
const PAUSE = 150;

/**
 * Gives rows with wrapped text the height they need, as the platform does on its own.
 *
 * Heights depend on the fonts of the window, so that they are no change of the workbook. A row with a set height keeps it.
 *
 * @returns looks at the sheet in front, after a short pause
 */
export function rowHeights(
  workbook: Workbook,
  commands: ICommandService,
  injector: Injector,
): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;

  function fit() {
    const sheet = workbook.getActiveSheet();
    if (!sheet) return;
    const range = {
      startRow: 0,
      endRow: Math.min(sheet.getLastRowWithContent(), ROWS),
      startColumn: 0,
      endColumn: sheet.getLastColumnWithContent(),
    };
    if (range.endRow < 0 || range.endColumn < 0) return;
    const heights = injector.get(AutoHeightController);
    const { redos } = heights.getUndoRedoParamsOfAutoHeight([range], sheet.getSheetId());
    for (const { id, params } of redos) {
      if (id !== SetWorksheetRowAutoHeightMutation.id) continue;
      // The id says what the parameters are.
      const found = params as ISetWorksheetRowAutoHeightMutationParams;
      const rowsAutoHeightInfo = found.rowsAutoHeightInfo.filter(
        ({ row }) => sheet.getRowManager().getRow(row)?.h === undefined,
      );
      commands.syncExecuteCommand(id, { ...found, rowsAutoHeightInfo }, { onlyLocal: true });
    }
  }

  return () => {
    clearTimeout(timer);
    timer = setTimeout(fit, PAUSE);
  };
}
