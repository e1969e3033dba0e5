import { isDateMark } from '../cellContent.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { answerMethod, type Methods, withSelf } from './session.ts';
import type { RuleRef } from './setRule.ts';
import {
  arrayArgument,
  booleanArgument,
  numberArgument,
  optionalTextArgument,
  textArgument,
} from './textArgument.ts';

function criteria(name: string, read: (args: readonly unknown[]) => readonly unknown[]) {
  return answerMethod<RuleRef>((_session, ref, args) =>
    withSelf({ ...ref, criteria: name, values: read(args) }, SELF),
  );
}

const oneNumber = (args: readonly unknown[]) => [numberArgument(args, 0)];
const twoNumbers = (args: readonly unknown[]) => [numberArgument(args, 0), numberArgument(args, 1)];
const dates = (args: readonly unknown[]) => args.filter(isDateMark);

export const DATA_VALIDATION_BUILDER: Methods<
  GoogleAppsScript.Spreadsheet.DataValidationBuilder,
  RuleRef
> = {
  requireValueInList: criteria('VALUE_IN_LIST', (args) => [
    arrayArgument(args, 0).map(String),
    args[1] !== false,
  ]),
  requireValueInRange: criteria('VALUE_IN_RANGE', (args) => [args[0], args[1] !== false]),
  requireCheckbox: criteria('CHECKBOX', () => []),
  requireNumberBetween: criteria('NUMBER_BETWEEN', twoNumbers),
  requireNumberNotBetween: criteria('NUMBER_NOT_BETWEEN', twoNumbers),
  requireNumberEqualTo: criteria('NUMBER_EQUAL_TO', oneNumber),
  requireNumberNotEqualTo: criteria('NUMBER_NOT_EQUAL_TO', oneNumber),
  requireNumberGreaterThan: criteria('NUMBER_GREATER_THAN', oneNumber),
  requireNumberGreaterThanOrEqualTo: criteria('NUMBER_GREATER_THAN_OR_EQUAL_TO', oneNumber),
  requireNumberLessThan: criteria('NUMBER_LESS_THAN', oneNumber),
  requireNumberLessThanOrEqualTo: criteria('NUMBER_LESS_THAN_OR_EQUAL_TO', oneNumber),
  requireDate: criteria('DATE_IS_VALID_DATE', () => []),
  requireDateAfter: criteria('DATE_AFTER', dates),
  requireDateBefore: criteria('DATE_BEFORE', dates),
  requireDateOnOrAfter: criteria('DATE_ON_OR_AFTER', dates),
  requireDateOnOrBefore: criteria('DATE_ON_OR_BEFORE', dates),
  requireDateEqualTo: criteria('DATE_EQUAL_TO', dates),
  requireDateBetween: criteria('DATE_BETWEEN', dates),
  requireFormulaSatisfied: criteria('CUSTOM_FORMULA', (args) => [textArgument(args, 0)]),
  setAllowInvalid: answerMethod((_session, ref, args) =>
    withSelf({ ...ref, allowInvalid: booleanArgument(args, 0) }, SELF),
  ),
  setHelpText: answerMethod((_session, ref, args) =>
    withSelf({ ...ref, help: optionalTextArgument(args, 0) ?? null }, SELF),
  ),
  build: answerMethod((_session, ref) => {
    if (ref.criteria === null) throw new Error('The data validation rule has no criteria');
    return { $object: 'DataValidation', ref };
  }),
};

export const DATA_VALIDATION: Methods<GoogleAppsScript.Spreadsheet.DataValidation, RuleRef> = {
  copy: answerMethod((_session, ref) => ({ $object: 'DataValidationBuilder', ref })),
  getAllowInvalid: answerMethod((_session, ref) => ref.allowInvalid),
  getHelpText: answerMethod((_session, ref) => ref.help),
  getCriteriaType: answerMethod((_session, ref) => ref.criteria),
  getCriteriaValues: answerMethod((_session, ref) => ref.values),
};
