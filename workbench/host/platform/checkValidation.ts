import type { ICellData, ISheetDataValidationRule } from '@univerjs/core';
import { cellContent } from '../cellContent.ts';
import type { Engine } from '../engine.ts';
import { cellName } from '../parseA1.ts';
import { type CellChanges, cellAt, findRange, sheetById } from '../sheetNamed.ts';
import { core } from '../univer.ts';
import type { Session } from './session.ts';

const { DataValidationErrorStyle, DataValidationType, DataValidationOperator } = core;

/** @throws Error naming the first cell whose new value a rejecting rule forbids, as the platform does */
export function checkValidation(session: Session, sheet: string, changes: CellChanges): void {
  const broken = firstBroken(session.platform.engine, sheet, changes);
  if (!broken) return;
  throw new Error(
    `The data you entered in cell ${broken} violates the data validation rules set on this cell.`,
  );
}

/** The first changed cell whose value a rejecting rule forbids. */
export function firstBroken(
  engine: Engine,
  sheet: string,
  changes: CellChanges,
): string | undefined {
  const rules = engine.validations(sheet);
  if (!rules.some((rule) => rule.errorStyle === DataValidationErrorStyle.STOP)) return undefined;
  for (const [row, cells] of Object.entries(changes)) {
    for (const [column, cell] of Object.entries(cells)) {
      const rule = engine.validationAt(sheet, Number(row), Number(column));
      if (rule && !allows(engine, sheet, rule, cell)) return cellName(Number(row), Number(column));
    }
  }
  return undefined;
}

function allows(
  engine: Engine,
  sheet: string,
  rule: ISheetDataValidationRule,
  cell: ICellData,
): boolean {
  // Blank cells and formulas are always taken; so are rules that only warn.
  if (rule.errorStyle !== DataValidationErrorStyle.STOP) return true;
  if (cell.f || cell.v === undefined || cell.v === null || cell.v === '') return true;
  switch (rule.type) {
    case DataValidationType.LIST:
      return listItems(engine, sheet, rule).includes(String(cellContent(cell, '', 'UTC')));
    case DataValidationType.CHECKBOX:
      return cell.t === core.CellValueType.BOOLEAN;
    case DataValidationType.DECIMAL:
    case DataValidationType.WHOLE:
    case DataValidationType.DATE:
      return cell.t === core.CellValueType.NUMBER && compares(rule, Number(cell.v));
    default:
      return true;
  }
}

/** The values a list rule offers: typed ones, or those in the range it names. */
function listItems(
  engine: Engine,
  sheet: string,
  rule: ISheetDataValidationRule,
): readonly string[] {
  const source = rule.formula1 ?? '';
  if (!source.startsWith('=')) return splitList(source);
  const range = findRange(engine, source.slice(1), sheet);
  if (!range) return [];
  const { startRow, endRow, startColumn, endColumn } = range.box;
  const items: string[] = [];
  for (let row = startRow; row <= endRow; row++) {
    for (let column = startColumn; column <= endColumn; column++) {
      const cell = cellAt(engine, sheetById(engine, range.sheet), row, column);
      items.push(String(cellContent(cell, '', 'UTC')));
    }
  }
  return items;
}

/** Univer joins the items of a list with commas, so an item cannot hold one. */
export function joinList(items: readonly string[]): string {
  const broken = items.find((item) => item.includes(','));
  if (broken !== undefined)
    throw new Error(`The workbench cannot offer "${broken}": it holds a comma`);
  return items.join(',');
}

export function splitList(source: string): readonly string[] {
  return source === '' ? [] : source.split(',');
}

function compares(rule: ISheetDataValidationRule, value: number): boolean {
  const low = Number(rule.formula1);
  const high = Number(rule.formula2);
  switch (rule.operator) {
    case DataValidationOperator.BETWEEN:
      return value >= low && value <= high;
    case DataValidationOperator.NOT_BETWEEN:
      return value < low || value > high;
    case DataValidationOperator.EQUAL:
      return value === low;
    case DataValidationOperator.NOT_EQUAL:
      return value !== low;
    case DataValidationOperator.GREATER_THAN:
      return value > low;
    case DataValidationOperator.GREATER_THAN_OR_EQUAL:
      return value >= low;
    case DataValidationOperator.LESS_THAN:
      return value < low;
    case DataValidationOperator.LESS_THAN_OR_EQUAL:
      return value <= low;
    default:
      return true;
  }
}
