import type { IWorkbookData } from '@univerjs/core';
import type { Extras } from './extras.ts';
import type { HostState } from './hostState.ts';
export interface BookFile {
  read(
    unit: string,
  ): Promise<{ readonly workbook: IWorkbookData; readonly extras: Extras } | undefined>;
  keep(state: HostState): { now(): Promise<void>; close(): Promise<void> };
}
export function bookFile(path: string): BookFile {
  throw new Error(`the workbench cannot keep ${path} yet`);
}
