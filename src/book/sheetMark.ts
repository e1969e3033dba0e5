import { LAYOUT_KEY, TABLE_KEY } from '../../shared/book/layout/layoutVersion.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Which table a sheet holds and how old its layout is; it stays with the sheet through renaming. */
export interface SheetMark {
  readonly table: string | undefined;
  /** 0 when the sheet was never laid out. */
  readonly layout: number;
}

export function readMark(sheet: Sheet): SheetMark {
  const found = new Map(
    sheet.getDeveloperMetadata().map((one) => [one.getKey(), one.getValue() ?? ''] as const),
  );
  return { table: found.get(TABLE_KEY), layout: Number(found.get(LAYOUT_KEY) ?? 0) };
}

export function writeMark(sheet: Sheet, table: string, layout: number): void {
  const wanted = [
    [TABLE_KEY, table],
    [LAYOUT_KEY, String(layout)],
  ] as const;
  const present = sheet.getDeveloperMetadata();
  for (const [key, value] of wanted) {
    const old = present.find((one) => one.getKey() === key);
    if (old) old.setValue(value);
    else sheet.addDeveloperMetadata(key, value);
  }
}
