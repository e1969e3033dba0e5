import type { ICommandService } from '@univerjs/core';
import type { LocalMutation, Operation, Selection } from '../../host/Host.ts';
import type { Box } from '../../host/parseA1.ts';

/** The workbook on the page: shows values, takes edits, computes nothing. */
export interface Grid {
  /** Runs a change made elsewhere. */
  take(operation: Operation): void;
  /** Puts calculated values into the cells. */
  calculated(values: readonly LocalMutation[]): void;
  selection(): Selection;
  select(sheet: string, range: string): void;
  /** Text the grid shows in a cell. */
  shown(sheet: string, cell: string): string;
  note(sheet: string, cell: string): string | undefined;
  /** Values of the cells of a sheet, by its id; blank is "". */
  values(sheet: string, box: Box): readonly (readonly (string | number)[])[];
  sheets(): readonly string[];
  /** The selection with the sheet's id and counted from zero. */
  target(): { readonly sheet: string; readonly box: Box };
  focus(): void;
  /** Resolves when the grid is drawn and takes keys. */
  readonly drawn: Promise<void>;
  readonly commands: ICommandService;
}
