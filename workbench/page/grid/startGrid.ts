import {
  ICommandService,
  type IWorkbookData,
  LifecycleService,
  LifecycleStages,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import {
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
  SheetsSelectionsService,
} from '@univerjs/sheets';
import { ILayoutService } from '@univerjs/ui';
import { skip } from 'rxjs';
import type { Host, LocalMutation } from '../../host/Host.ts';
import { type Box, formatA1 } from '../../host/parseA1.ts';
import type { WindowMutation } from '../../server/messageTypes.ts';
import type { Grid } from './gridTypes.ts';
import { locate, reading } from './reading.ts';
import { rowHeights } from './rowHeights.ts';
import { startUniver } from './startUniver.ts';

interface GridListeners {
  /** A change the person at this window made. */
  readonly changed: (mutation: WindowMutation) => void;
  readonly selected: () => void;
  /** Another sheet came to the front. */
  readonly activated: () => void;
}

/** Changes each window works out for itself from the cells' content. */
const DERIVED = /^sheet\.mutation\.set-worksheet-row-(auto-height|is-auto-height)$/;

/** Changes that belong to everybody; the rest (formula results, editor states) stays in the window. */
const SHARED =
  /^(sheet|data-validation)\.mutation\.|^formula\.mutation\.(set|remove)-defined-name$/;

export function startGrid(
  container: HTMLElement,
  snapshot: ReturnType<Host['snapshot']>,
  listeners: GridListeners,
): Grid {
  const univer = startUniver(container);
  // The host's contract: the snapshot holds Univer's workbook data.
  const data = snapshot.workbook as IWorkbookData;
  const workbook = univer.createUnit<IWorkbookData, Workbook>(
    UniverInstanceType.UNIVER_SHEET,
    data,
  );
  const injector = univer.__getInjector();
  const commands = injector.get(ICommandService);
  const selections = injector.get(SheetsSelectionsService);
  let taking = false;

  commands.onMutationExecutedForCollab((info, options) => {
    if (taking || options?.onlyLocal || options?.fromCollab || !isFor(info.params, data.id)) return;
    if (!SHARED.test(info.id) || DERIVED.test(info.id)) return;
    // A copy, because Univer goes on using the parameters.
    listeners.changed({ id: info.id, params: JSON.parse(JSON.stringify(info.params)) });
  });
  const fitRows = rowHeights(workbook, commands, injector);
  workbook.activeSheet$.subscribe(fitRows);
  // The first is the sheet in front now, before anybody listens.
  workbook.activeSheet$.pipe(skip(1)).subscribe(() => listeners.activated());
  selections.selectionChanged$.subscribe(() => listeners.selected());

  function run(mutation: LocalMutation, options: Record<string, boolean>) {
    taking = true;
    try {
      // Parameters come from the host's own engine, of the same version.
      commands.syncExecuteCommand(mutation.id, mutation.params as object, options);
    } finally {
      taking = false;
    }
  }

  return {
    commands,
    drawn: injector.get(LifecycleService).onStage(LifecycleStages.Rendered),
    focus: () => {
      // The browser gives a closed dialog's focus back without the caret, and keys would go nowhere.
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      injector.get(ILayoutService).focus();
    },
    take: (operation) => {
      run(operation, { fromCollab: true, fromChangeset: true });
      fitRows();
    },
    calculated: (values) => {
      for (const value of values) run(value, { onlyLocal: true, fromFormula: true });
      fitRows();
    },
    ...pointing(workbook, commands, selections),
    ...reading(workbook),
  };
}

function isFor(params: unknown, unit: string): boolean {
  return (
    typeof params === 'object' && params !== null && 'unitId' in params && params.unitId === unit
  );
}

function pointing(
  workbook: Workbook,
  commands: ICommandService,
  selections: SheetsSelectionsService,
): Pick<Grid, 'selection' | 'select' | 'target'> {
  function current() {
    const sheet = workbook.getActiveSheet();
    if (!sheet) throw new Error('the workbook has no sheet');
    const range = selections.getCurrentLastSelection()?.range;
    const box = range ? fill(range, sheet.getRowCount(), sheet.getColumnCount()) : FIRST_CELL;
    return { sheet, box };
  }
  return {
    selection: () => {
      const { sheet, box } = current();
      return { sheet: sheet.getName(), range: formatA1(box) };
    },
    target: () => {
      const { sheet, box } = current();
      return { sheet: sheet.getSheetId(), box };
    },
    select: (name, range) => {
      const { sheet, box } = locate(workbook, name, range);
      const ids = { unitId: workbook.getUnitId(), subUnitId: sheet.getSheetId() };
      commands.syncExecuteCommand(SetWorksheetActiveOperation.id, ids);
      const primary = { actualRow: box.startRow, actualColumn: box.startColumn };
      const start = { ...box, endRow: box.startRow, endColumn: box.startColumn };
      commands.syncExecuteCommand(SetSelectionsOperation.id, {
        ...ids,
        selections: [
          {
            range: box,
            primary: { ...start, ...primary, isMerged: false, isMergedMainCell: false },
          },
        ],
        reveal: true,
      });
    },
  };
}

const FIRST_CELL: Box = { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 };

/** Whole rows and columns come without numbers for their open side. */
function fill(range: Box, rows: number, columns: number): Box {
  const or = (value: number, instead: number) => (Number.isFinite(value) ? value : instead);
  return {
    startRow: or(range.startRow, 0),
    startColumn: or(range.startColumn, 0),
    endRow: or(range.endRow, rows - 1),
    endColumn: or(range.endColumn, columns - 1),
  };
}
