import type { DataValidation, DataValidationWithFormulae } from '@cj-tech-master/excelts';
import type { ISheetDataValidationRule } from '@univerjs/core';
import { core } from '../univer.ts';

const { DataValidationErrorStyle, DataValidationType, DataValidationOperator } = core;

/** Longest list of typed items that spreadsheet programs take. */
const LIST_LIMIT = 255;

/** Check boxes have no kind of their own in a file: a choice of these two. */
const CHECKBOX_LIST = 'TRUE,FALSE';

const DAY = 86_400_000;
const EPOCH_SERIAL = 25_569;

/** A rule as an .xlsx file holds it; undefined for those it cannot hold. */
export function ruleToFile(rule: ISheetDataValidationRule): DataValidation | undefined {
  const shared = {
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: rule.errorStyle === DataValidationErrorStyle.STOP ? 'stop' : 'warning',
    ...(rule.prompt ? { prompt: rule.prompt, error: rule.prompt, showInputMessage: true } : {}),
  };
  const { formula1 = '', formula2 } = rule;
  switch (rule.type) {
    case DataValidationType.CHECKBOX:
      return { ...shared, type: 'list', formulae: [`"${CHECKBOX_LIST}"`] };
    case DataValidationType.LIST: {
      if (formula1.startsWith('='))
        return { ...shared, type: 'list', formulae: [formula1.slice(1)] };
      if (formula1.length > LIST_LIMIT || formula1.includes('"')) return undefined;
      return { ...shared, type: 'list', formulae: [`"${formula1}"`] };
    }
    case DataValidationType.CUSTOM:
      return { ...shared, type: 'custom', formulae: [formula1.replace(/^=/, '')] };
    case DataValidationType.WHOLE:
    case DataValidationType.DECIMAL:
    case DataValidationType.DATE: {
      const bounds = formula2 === undefined ? [formula1] : [formula1, formula2];
      const formulae = bounds.map((bound) =>
        rule.type === DataValidationType.DATE ? dateOf(bound) : Number(bound),
      );
      const operator = rule.operator ?? DataValidationOperator.BETWEEN;
      return { ...shared, type: rule.type, operator, formulae };
    }
    default:
      return undefined;
  }
}

function dateOf(serial: string): Date {
  return new Date(Math.round((Number(serial) - EPOCH_SERIAL) * DAY));
}

/** Univer's form of a rule read from a file, without its cells. */
export function ruleFromFile(
  found: DataValidation,
): Omit<ISheetDataValidationRule, 'uid' | 'ranges'> | undefined {
  if (found.type === 'any' || found.type === 'textLength') return undefined;
  const kind = kindOf(found);
  return {
    ...kind,
    allowBlank: true,
    showErrorMessage: true,
    errorStyle:
      found.errorStyle === 'warning' || found.errorStyle === 'information'
        ? DataValidationErrorStyle.WARNING
        : DataValidationErrorStyle.STOP,
    ...(found.prompt ? { error: found.prompt, prompt: found.prompt, showInputMessage: true } : {}),
  };
}

function kindOf(
  found: DataValidationWithFormulae,
): Pick<ISheetDataValidationRule, 'type' | 'formula1' | 'formula2' | 'operator' | 'showDropDown'> {
  const bounds = (found.formulae ?? []).map((bound: unknown) =>
    bound instanceof Date ? String(bound.getTime() / DAY + EPOCH_SERIAL) : String(bound),
  );
  const [first = '', second] = bounds;
  const list = /^"(.*)"$/s.exec(first);
  if (found.type === 'list' && list?.[1] === CHECKBOX_LIST)
    return { type: DataValidationType.CHECKBOX };
  if (found.type === 'list') {
    return {
      type: DataValidationType.LIST,
      formula1: list ? (list[1] ?? '') : `=${first}`,
      showDropDown: true,
    };
  }
  if (found.type === 'custom') return { type: DataValidationType.CUSTOM, formula1: `=${first}` };
  const operator = Object.values(DataValidationOperator).find((name) => name === found.operator);
  return {
    type: found.type,
    operator: operator ?? DataValidationOperator.BETWEEN,
    formula1: first,
    ...(second === undefined ? {} : { formula2: second }),
  };
}
