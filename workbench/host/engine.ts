import type {
  ICellData,
  IMutationInfo,
  Injector,
  IRange,
  ISheetDataValidationRule,
  IWorkbookData,
  Workbook,
} from '@univerjs/core';
import type { BaseFunction, IDefinedNamesServiceParam } from '@univerjs/engine-formula';
import { calculator } from './calculator.ts';
import {
  clampOpenRanges,
  keepOpenRanges,
  readNamesAnew,
  readOpenRanges,
} from './closeOpenRanges.ts';
import {
  core,
  dataValidation,
  formula,
  sheets,
  sheetsDataValidation,
  sheetsFilter,
  sheetsFormula,
} from './univer.ts';

/** One workbook and its formula engine. */
export interface Engine {
  readonly unit: string;
  readonly workbook: Workbook;
  /** Applies a mutation at once; `false` when Univer does not know or refuses it. */
  mutate(id: string, params: object, origin: string): boolean;
  /** Runs a Univer command, which makes the mutations that belong together (formulas follow inserted rows). */
  command(id: string, params: object): boolean;
  /** Cells filled by a formula elsewhere in the sheet, by row and column. */
  spilled(sheet: string): Readonly<Record<number, Readonly<Record<number, ICellData>>>>;
  /** Extent of each spilling formula, by its row and column. */
  spillExtents(sheet: string): Readonly<Record<number, Readonly<Record<number, IRange>>>>;
  validationAt(sheet: string, row: number, column: number): ISheetDataValidationRule | undefined;
  validations(sheet: string): readonly ISheetDataValidationRule[];
  filterRange(sheet: string): IRange | undefined;
  definedNames(): Readonly<Record<string, IDefinedNamesServiceParam>>;
  /** The mutations that put the last calculated values into another copy of the workbook. */
  results(): readonly IMutationInfo[];
  hasFormulas(): boolean;
  calculate(): Promise<void>;
  /** Everything a copy needs, plug-in data included. */
  save(): IWorkbookData;
  onMutation(listener: (mutation: IMutationInfo, origin: string) => void): void;
  dispose(): void;
}

type CellMap<Value> = Record<number, Record<number, Value>>;

export type SheetFunctions = readonly (readonly [new (name: string) => BaseFunction, string])[];

let engines = 0;

/** Formula caches are shared by all engines of a process and keyed by unit, so each has its own id. */
export function nextUnit(): string {
  engines += 1;
  return `book-${engines}`;
}

clampOpenRanges(formula.BaseReferenceObject);

/** Starts an engine on a workbook whose id came from {@link nextUnit}. */
export function startEngine(data: IWorkbookData, functions: SheetFunctions): Engine {
  const univer = startUniver(functions);
  const injector = univer.__getInjector();
  const lexer = injector.get(formula.LexerTreeBuilder);
  readOpenRanges(lexer);
  readNamesAnew(lexer, formula.LexerTreeBuilder);
  const workbook = univer.createUnit<IWorkbookData, Workbook>(
    core.UniverInstanceType.UNIVER_SHEET,
    data,
  );
  // Its debounced, incremental calculation goes stale when a spill shrinks; the calculator replaces it.
  injector.get(sheetsFormula.TriggerCalculationController).dispose();
  const commands = injector.get(core.ICommandService);
  keepOpenRanges(commands, sheets.SetRangeValuesMutation.id);
  const origins = ['host'];
  const run = (id: string, params: object) =>
    commands.syncExecuteCommand<object, boolean>(id, params);
  const calculation = calculator(injector, data.id);
  return {
    unit: data.id,
    workbook,
    mutate: (id, params, origin) => withOrigin(origins, origin, () => run(id, params)),
    command: run,
    ...readers(injector, data.id),
    results: calculation.results,
    calculate: calculation.run,
    save: () => injector.get(core.IResourceLoaderService).saveUnit<IWorkbookData>(data.id) ?? data,
    onMutation: (listener) => {
      commands.onMutationExecutedForCollab((info, options) => {
        if (
          options?.onlyLocal ||
          !info.params ||
          info.id.startsWith('formula.mutation.set-formula')
        ) {
          return;
        }
        listener({ id: info.id, params: info.params }, origins[0] ?? 'host');
      });
    },
    dispose: () => univer.dispose(),
  };
}

function readers(injector: Injector, unit: string) {
  const model = injector.get(formula.FormulaDataModel);
  const rules = injector.get(sheetsDataValidation.SheetDataValidationModel);
  const filters = injector.get(sheetsFilter.SheetsFilterService);
  const names = injector.get(formula.IDefinedNamesService);
  return {
    // Univer types these with nullable levels; the readers treat a missing level as empty.
    spilled: (sheet: string) =>
      (model.getArrayFormulaCellData()[unit]?.[sheet] ?? {}) as CellMap<ICellData>,
    spillExtents: (sheet: string) =>
      (model.getArrayFormulaRange()[unit]?.[sheet] ?? {}) as CellMap<IRange>,
    validationAt: (sheet: string, row: number, column: number) =>
      rules.getRuleByLocation(unit, sheet, row, column),
    validations: (sheet: string) => rules.getRules(unit, sheet),
    hasFormulas: () =>
      Object.values(model.getFormulaData()[unit] ?? {}).some(
        (sheet) => Object.keys(sheet ?? {}).length > 0,
      ),
    filterRange: (sheet: string) => filters.getFilterModel(unit, sheet)?.getRange(),
    definedNames: () => names.getDefinedNameMap(unit) ?? {},
  };
}

function startUniver(functions: SheetFunctions) {
  const univer = new core.Univer({
    locale: core.LocaleType.EN_US,
    locales: { [core.LocaleType.EN_US]: {} },
    logLevel: core.LogLevel.SILENT,
  });
  univer.registerPlugin(formula.UniverFormulaEnginePlugin, {
    function: functions.map(([made, name]): [typeof made, string] => [made, name]),
  });
  univer.registerPlugin(sheets.UniverSheetsPlugin);
  univer.registerPlugin(sheetsFormula.UniverSheetsFormulaPlugin);
  univer.registerPlugin(dataValidation.UniverDataValidationPlugin);
  univer.registerPlugin(sheetsDataValidation.UniverSheetsDataValidationPlugin);
  univer.registerPlugin(sheetsFilter.UniverSheetsFilterPlugin);
  return univer;
}

function withOrigin(origins: string[], origin: string, run: () => boolean): boolean {
  origins.unshift(origin);
  try {
    return run();
  } finally {
    origins.shift();
  }
}
