import type { ISheetDataValidationRule } from '@univerjs/core';
import { isDateMark } from '../cellContent.ts';
import { formatA1, quoteSheet } from '../parseA1.ts';
import { instantToSerial } from '../parseDate.ts';
import { rangeOf, sheetById } from '../sheetNamed.ts';
import { isObjectMark } from '../standIn/protocolTypes.ts';
import { core, dataValidation } from '../univer.ts';
import { joinList } from './checkValidation.ts';
import type { Session } from './session.ts';
import type { RangeRef } from './sheetOf.ts';
import { arrayArgument, textArgument } from './textArgument.ts';

/** A rule before it is set on cells. */
export interface RuleRef {
  readonly criteria: string | null;
  readonly values: readonly unknown[];
  readonly allowInvalid: boolean;
  readonly help: string | null;
}

export const NEW_RULE: RuleRef = { criteria: null, values: [], allowInvalid: true, help: null };

/** Number and date criteria: the platform's name and Univer's operator. */
export const COMPARISONS = {
  BETWEEN: 'between',
  NOT_BETWEEN: 'notBetween',
  EQUAL_TO: 'equal',
  NOT_EQUAL_TO: 'notEqual',
  GREATER_THAN: 'greaterThan',
  GREATER_THAN_OR_EQUAL_TO: 'greaterThanOrEqual',
  LESS_THAN: 'lessThan',
  LESS_THAN_OR_EQUAL_TO: 'lessThanOrEqual',
} as const;

export const DATE_COMPARISONS: Readonly<Record<string, string>> = {
  DATE_AFTER: 'greaterThan',
  DATE_BEFORE: 'lessThan',
  DATE_ON_OR_AFTER: 'greaterThanOrEqual',
  DATE_ON_OR_BEFORE: 'lessThanOrEqual',
  DATE_EQUAL_TO: 'equal',
  DATE_BETWEEN: 'between',
};

/** Univer's form of a rule. */
function toUniver(session: Session, rule: RuleRef, uid: string): ISheetDataValidationRule {
  return {
    uid,
    ranges: [],
    ...kindOf(session, rule),
    allowBlank: true,
    errorStyle: rule.allowInvalid
      ? core.DataValidationErrorStyle.WARNING
      : core.DataValidationErrorStyle.STOP,
    showErrorMessage: true,
    ...(rule.help === null ? {} : { error: rule.help, prompt: rule.help, showInputMessage: true }),
  };
}

type RuleKind = Pick<
  ISheetDataValidationRule,
  'type' | 'formula1' | 'formula2' | 'operator' | 'showDropDown'
>;

function kindOf(session: Session, rule: RuleRef): RuleKind {
  const [first, second] = rule.values;
  const { DataValidationType: types } = core;
  switch (rule.criteria) {
    case 'VALUE_IN_LIST':
      return {
        type: types.LIST,
        formula1: joinList(arrayArgument(rule.values, 0).map(String)),
        showDropDown: second === true,
      };
    case 'VALUE_IN_RANGE':
      return {
        type: types.LIST,
        formula1: rangeText(session, first),
        showDropDown: second === true,
      };
    case 'CHECKBOX':
      return { type: types.CHECKBOX };
    case 'CUSTOM_FORMULA':
      return { type: types.CUSTOM, formula1: textArgument(rule.values, 0) };
    default:
      return comparison(session, rule.criteria ?? '', rule.values);
  }
}

function rangeText(session: Session, mark: unknown): string {
  if (!isObjectMark(mark) || mark.$object !== 'Range') throw new Error('A range is needed');
  // The class was checked; the stand-in made the reference.
  const ref = mark.ref as RangeRef;
  const name = sheetById(session.platform.engine, ref.sheet).getName();
  return `=${quoteSheet(name)}!${formatA1(ref.box)}`;
}

function comparison(session: Session, name: string, given: readonly unknown[]): RuleKind {
  const [formula1, formula2] = given.map((value) =>
    String(isDateMark(value) ? instantToSerial(value.$date, session.platform.zone) : value),
  );
  const bounds = {
    ...(formula1 === undefined ? {} : { formula1 }),
    ...(formula2 === undefined ? {} : { formula2 }),
  };
  if (name === 'DATE_IS_VALID_DATE') {
    // Every serial a sheet can show as a date.
    return {
      type: core.DataValidationType.DATE,
      ...operator('between'),
      formula1: '1',
      formula2: '2958465',
    };
  }
  if (name.startsWith('DATE_')) {
    return {
      type: core.DataValidationType.DATE,
      ...operator(DATE_COMPARISONS[name] ?? ''),
      ...bounds,
    };
  }
  const compared = name.replace('NUMBER_', '');
  if (!isComparison(compared)) throw new Error(`The workbench does not know the criteria ${name}`);
  return { type: core.DataValidationType.DECIMAL, ...operator(COMPARISONS[compared]), ...bounds };
}

function isComparison(name: string): name is keyof typeof COMPARISONS {
  return name in COMPARISONS;
}

function operator(name: string): Pick<RuleKind, 'operator'> {
  const found = Object.values(core.DataValidationOperator).find((item) => item === name);
  if (!found) throw new Error(`The workbench does not know the comparison ${name}`);
  return { operator: found };
}

/** Puts a rule on a range, or takes the rules there away. */
export function setRule(session: Session, ref: RangeRef, rule: RuleRef | undefined): void {
  const { engine } = session.platform;
  const target = { unitId: engine.unit, subUnitId: ref.sheet };
  const range = rangeOf(ref.box);
  for (const old of engine.validations(ref.sheet)) {
    if (!old.ranges.some((item) => core.Rectangle.intersects(item, range))) continue;
    const rest = core.Rectangle.subtractMulti(old.ranges, [range]);
    if (rest.length === 0) {
      engine.mutate(
        dataValidation.RemoveDataValidationMutation.id,
        { ...target, ruleId: old.uid },
        'host',
      );
      continue;
    }
    const payload = { type: dataValidation.UpdateRuleType.RANGE, payload: rest };
    const params = { ...target, ruleId: old.uid, payload };
    engine.mutate(dataValidation.UpdateDataValidationMutation.id, params, 'host');
  }
  if (!rule) return;
  const made = { ...toUniver(session, rule, session.platform.uuid()), ranges: [range] };
  engine.mutate(dataValidation.AddDataValidationMutation.id, { ...target, rule: made }, 'host');
}
