import type { ISheetDataValidationRule } from '@univerjs/core';
import { findRange } from '../sheetNamed.ts';
import type { ObjectMark } from '../standIn/protocolTypes.ts';
import { core } from '../univer.ts';
import { splitList } from './checkValidation.ts';
import type { Session } from './session.ts';
import { COMPARISONS, DATE_COMPARISONS, type RuleRef } from './setRule.ts';
import { rangeMark } from './sheetOf.ts';

/** The platform's form of a rule found on a cell. */
export function fromUniver(
  session: Session,
  sheet: string,
  rule: ISheetDataValidationRule,
): ObjectMark {
  const ref: RuleRef = {
    ...criteriaOf(session, sheet, rule),
    allowInvalid: rule.errorStyle !== core.DataValidationErrorStyle.STOP,
    help: rule.prompt ?? null,
  };
  return { $object: 'DataValidation', ref };
}

function criteriaOf(
  session: Session,
  sheet: string,
  rule: ISheetDataValidationRule,
): Pick<RuleRef, 'criteria' | 'values'> {
  const source = rule.formula1 ?? '';
  const { DataValidationType: types } = core;
  if (rule.type === types.CHECKBOX) return { criteria: 'CHECKBOX', values: [] };
  if (rule.type === types.CUSTOM) return { criteria: 'CUSTOM_FORMULA', values: [source] };
  if (rule.type === types.LIST && source.startsWith('=')) {
    const found = findRange(session.platform.engine, source.slice(1), sheet);
    const values = [found ? rangeMark(found.sheet, found.box) : null, rule.showDropDown === true];
    return { criteria: 'VALUE_IN_RANGE', values };
  }
  if (rule.type === types.LIST) {
    return { criteria: 'VALUE_IN_LIST', values: [splitList(source), rule.showDropDown === true] };
  }
  const names = rule.type === types.DATE ? Object.entries(DATE_COMPARISONS) : numberNames();
  const name = names.find(([, item]) => item === rule.operator)?.[0] ?? null;
  const bounds = [rule.formula1, rule.formula2].filter((bound) => bound !== undefined);
  if (rule.type === types.DATE && bounds[1] === '2958465') {
    return { criteria: 'DATE_IS_VALID_DATE', values: [] };
  }
  return { criteria: name, values: bounds.map(Number) };
}

function numberNames(): readonly (readonly [string, string])[] {
  return Object.entries(COMPARISONS).map(([name, item]) => [`NUMBER_${name}`, item] as const);
}
