import { Workbook } from '@cj-tech-master/excelts';
import type { IRange, Worksheet as UniverSheet } from '@univerjs/core';
import type { Engine } from '../engine.ts';
import { splitSheet } from '../parseA1.ts';
import type { PlatformState } from '../platformState.ts';
import { cellAt } from '../sheetNamed.ts';
import { ruleToFile } from './ruleToFile.ts';
import { type HiddenPart, writeHidden } from './writeHidden.ts';
import { writeSheet } from './writeSheet.ts';

/** The workbook as the bytes of an .xlsx file. */
export async function writeWorkbookFile(
  engine: Engine,
  platformState: PlatformState,
): Promise<Uint8Array> {
  const workbook = new Workbook();
  workbook.creator = 'workbench';
  for (const sheet of engine.workbook.getSheets()) writeSheet(engine, workbook, sheet);
  for (const item of Object.values(engine.definedNames())) {
    const target = item.formulaOrRefString.replace(/^=/, '');
    if (splitSheet(target).sheet !== undefined) workbook.definedNames.add(target, item.name);
  }
  writeHidden(workbook, hiddenPart(engine, platformState));
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

function hiddenPart(engine: Engine, platformState: PlatformState): HiddenPart {
  const sheets = engine.workbook.getSheets().map((sheet: UniverSheet) => ({
    id: sheet.getSheetId(),
    name: sheet.getName(),
    rows: sheet.getRowCount(),
    columns: sheet.getColumnCount(),
    spills: spillsOf(engine, sheet),
    rules: engine.validations(sheet.getSheetId()).filter((rule) => ruleToFile(rule) === undefined),
  }));
  return { sheets, extras: platformState };
}

/** Extents of the formulas that did spill: one that found filled cells has an extent too, but those cells are not its own. */
function spillsOf(engine: Engine, sheet: UniverSheet): readonly IRange[] {
  return Object.values(engine.spillExtents(sheet.getSheetId()))
    .flatMap((row) => Object.values(row))
    .filter(
      (extent) => cellAt(engine, sheet, extent.startRow, extent.startColumn)?.v !== '#SPILL!',
    );
}
