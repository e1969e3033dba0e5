import { LocaleType, LogLevel, Univer } from '@univerjs/core';
import { UniverDataValidationPlugin } from '@univerjs/data-validation';
import { UniverDocsPlugin } from '@univerjs/docs';
import { UniverDocsUIPlugin } from '@univerjs/docs-ui';
import { UniverFormulaEnginePlugin } from '@univerjs/engine-formula';
import { UniverRenderEnginePlugin } from '@univerjs/engine-render';
import { IRPCChannelService } from '@univerjs/rpc';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
import { UniverSheetsDataValidationUIPlugin } from '@univerjs/sheets-data-validation-ui';
import { CalculationMode, UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import { UniverSheetsFormulaUIPlugin } from '@univerjs/sheets-formula-ui';
import { UniverSheetsNumfmtPlugin } from '@univerjs/sheets-numfmt';
import { UniverSheetsNumfmtUIPlugin } from '@univerjs/sheets-numfmt-ui';
import { UniverSheetsUIPlugin } from '@univerjs/sheets-ui';
import { UniverUIPlugin } from '@univerjs/ui';
import { NEVER } from 'rxjs';
import { locales } from './locales.ts';

const TERMINAL = { notExecuteFormula: true } as const;

/** Without calculation the formula plug-in asks for a channel to a calculating worker; here the values come with the operations. */
const NO_WORKER = {
  call: <Answer>() => new Promise<Answer>(() => {}),
  subscribe: () => NEVER,
};

/** Ranges are protected by the add-on, with a warning; the grid's own kind would lock them in one window only. */
const NO_PROTECTING = Object.fromEntries(
  [
    'sheet.contextMenu.permission',
    'sheet.command.add-range-protection-from-sheet-bar',
    'sheet.command.change-sheet-protection-from-sheet-bar',
    'sheet.command.delete-worksheet-protection-from-sheet-bar',
    'sheet.command.view-sheet-permission-from-sheet-bar',
  ].map((id) => [id, { hidden: true }]),
);

/** Univer as a grid that computes nothing. */
export function startUniver(container: HTMLElement): Univer {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: locales(),
    logLevel: LogLevel.ERROR,
  });
  univer
    .__getInjector()
    .add([
      IRPCChannelService,
      { useValue: { requestChannel: () => NO_WORKER, registerChannel: () => {} } },
    ]);
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverFormulaEnginePlugin, TERMINAL);
  univer.registerPlugin(UniverUIPlugin, {
    container,
    header: true,
    headerMenu: false,
    toolbar: false,
    footer: true,
    contextMenu: true,
  });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverDocsUIPlugin);
  univer.registerPlugin(UniverSheetsPlugin, TERMINAL);
  univer.registerPlugin(UniverSheetsUIPlugin, {
    formulaBar: true,
    menu: NO_PROTECTING,
    footer: { sheetBar: true, statisticBar: true, menus: false, zoomSlider: false },
  });
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    ...TERMINAL,
    initialFormulaComputing: CalculationMode.NO_CALCULATION,
  });
  univer.registerPlugin(UniverSheetsFormulaUIPlugin, TERMINAL);
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
  univer.registerPlugin(UniverDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationUIPlugin, { showEditOnDropdown: false });
  return univer;
}
