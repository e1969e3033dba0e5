import type { Selection } from '../host/Host.ts';
import { pageElement } from './htmlElement.ts';
import type { Workbench } from './workbench.ts';

/** What page tests and pictures need of the grid, whose cells are pixels. */
export interface TestHook {
  select(sheet: string, range: string): void;
  selection(): Selection;
  /** Text the grid shows in a cell. */
  value(sheet: string, cell: string): string;
  sheets(): readonly string[];
  settled(): boolean;
  /** Time from the start of navigation to the drawn grid [ms]. */
  readonly drawnAfter: number;
}

declare global {
  interface Window {
    workbench?: TestHook;
  }
}

/** Opens the hook once the grid is drawn, and takes the starting screen away. */
export async function exposeHook(workbench: Workbench): Promise<void> {
  const { grid } = workbench;
  await grid.drawn;
  grid.focus();
  pageElement('starting').hidden = true;
  window.workbench = {
    select: grid.select,
    selection: grid.selection,
    value: grid.shown,
    sheets: grid.sheets,
    settled: workbench.settled,
    drawnAfter: performance.now(),
  };
}
