import { Workbook, type Worksheet } from '@cj-tech-master/excelts';
import type { IMutationInfo, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { emptyWorkbook } from '../emptyWorkbook.ts';
import { parseA1 } from '../parseA1.ts';
import { EMPTY_PLATFORM_STATE, type PlatformState } from '../platformState.ts';
import { unusedSheetId } from '../sheetNamed.ts';
import { dataValidation, formula, sheetsFilter } from '../univer.ts';
import { readSheet, rulesOf } from './readSheet.ts';
import { HIDDEN_NAME, type HiddenPart, readHidden } from './writeHidden.ts';

export interface ReadBook {
  readonly workbook: IWorkbookData;
  /** Rules, names and filters: run once on the new engine. */
  readonly setup: readonly IMutationInfo[];
  readonly platformState: PlatformState;
}

/** Reads an .xlsx file, whether the workbench or another program wrote it. */
export async function readWorkbookFile(
  bytes: Uint8Array,
  unit: string,
  name: string,
): Promise<ReadBook> {
  const file = new Workbook();
  await file.xlsx.load(bytes);
  const hidden = readHidden(file);
  const found = file.worksheets.filter((sheet) => sheet.name !== HIDDEN_NAME);
  const known = new Map(hidden?.sheets.map((sheet) => [sheet.name, sheet]));
  const ids = [...known.values()].map((sheet) => sheet.id);
  const read = found.map((sheet) => {
    const part = known.get(sheet.name);
    const id = part?.id ?? unusedSheetId(ids);
    ids.push(id);
    return { sheet, id, part, data: readSheet(sheet, id, part) };
  });
  const workbook: IWorkbookData = {
    ...emptyWorkbook(unit, name),
    sheetOrder: read.map((item) => item.id),
    sheets: Object.fromEntries(read.map((item) => [item.id, item.data])),
  };
  const setup = [...read.flatMap((item) => sheetSetup(unit, item)), ...namesSetup(unit, file)];
  return { workbook, setup, platformState: { ...EMPTY_PLATFORM_STATE, ...hidden?.extras } };
}

interface ReadSheet {
  readonly sheet: Worksheet;
  readonly id: string;
  readonly part: HiddenPart['sheets'][number] | undefined;
  readonly data: Partial<IWorksheetData>;
}

function sheetSetup(unit: string, { sheet, id, part, data }: ReadSheet): readonly IMutationInfo[] {
  const target = { unitId: unit, subUnitId: id };
  const size = { rows: data.rowCount ?? 1, columns: data.columnCount ?? 1 };
  const rules = [...rulesOf(sheet, size), ...(part?.rules ?? [])].map((rule, index) => ({
    id: dataValidation.AddDataValidationMutation.id,
    params: { ...target, rule: { ...rule, uid: `file-${id}-${index}` } },
  }));
  const range = typeof sheet.autoFilter === 'string' ? parseA1(sheet.autoFilter, size) : undefined;
  const filter = { id: sheetsFilter.SetSheetsFilterRangeMutation.id, params: { ...target, range } };
  return range ? [...rules, filter] : rules;
}

function namesSetup(unit: string, file: Workbook): readonly IMutationInfo[] {
  return file.definedNames.model
    .filter((item) => !item.name.startsWith('_xlnm.'))
    .flatMap((item, index) => {
      const [target] = item.ranges;
      if (target === undefined) return [];
      const params = {
        unitId: unit,
        id: `name-${index}`,
        name: item.name,
        formulaOrRefString: target,
      };
      return [{ id: formula.SetDefinedNameMutation.id, params }];
    });
}
