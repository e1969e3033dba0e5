import type { IMutationInfo, Injector } from '@univerjs/core';
import type { ISetRangeValuesMutationParams } from '@univerjs/sheets';
import { core, formula, sheets } from './univer.ts';

export interface Calculator {
  /** Calculates every formula and resolves when the values are in the workbook. */
  run(): Promise<void>;
  results(): readonly IMutationInfo[];
}

/** Calculates the whole workbook from nothing, because Univer's incremental way keeps stale spills. */
export function calculator(injector: Injector, unit: string): Calculator {
  const commands = injector.get(core.ICommandService);
  const model = injector.get(formula.FormulaDataModel);
  const service = injector.get(formula.ICalculateFormulaService);
  const lastValues = new Map<string, ISetRangeValuesMutationParams>();

  commands.onCommandExecuted((info, options) => {
    if (
      info.id !== sheets.SetRangeValuesMutation.id ||
      !options?.['applyFormulaCalculationResult']
    ) {
      return;
    }
    // The id says what the parameters are.
    const params = info.params as ISetRangeValuesMutationParams;
    lastValues.set(params.subUnitId, params);
  });

  function run(): Promise<void> {
    lastValues.clear();
    model.setArrayFormulaRange({ [unit]: {} });
    model.setArrayFormulaCellData({ [unit]: {} });
    return new Promise((resolve) => {
      const done = service.executionCompleteListener$.subscribe(() => {
        done.unsubscribe();
        // The values reach the cells in microtasks that follow this notice.
        setImmediate(resolve);
      });
      commands.syncExecuteCommand(
        formula.SetFormulaCalculationStartMutation.id,
        { forceCalculation: true },
        { onlyLocal: true },
      );
    });
  }

  function results(): readonly IMutationInfo[] {
    const spills = {
      id: formula.SetArrayFormulaDataMutation.id,
      params: {
        arrayFormulaRange: model.getArrayFormulaRange(),
        arrayFormulaCellData: model.getArrayFormulaCellData(),
      },
    };
    const values = [...lastValues.values()].map((params) => ({
      id: sheets.SetRangeValuesMutation.id,
      params,
    }));
    return [spills, ...values];
  }

  return { run, results };
}
