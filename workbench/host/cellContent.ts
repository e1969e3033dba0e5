import type { ICellData, IStyleData } from '@univerjs/core';
import { instantToSerial, serialToInstant } from './parseDate.ts';
import { core } from './univer.ts';

/** A date on its way between the engine and the add-on's context, which makes its own Date of it. */
export interface DateMark {
  readonly $date: number;
}

/** What a cell holds as the add-on sees it. */
export type CellContent = string | number | boolean | DateMark;

export function isDateMark(value: unknown): value is DateMark {
  return typeof value === 'object' && value !== null && '$date' in value;
}

const { numfmt, CellValueType } = core;

function isDatePattern(pattern: string): boolean {
  return pattern !== '' && numfmt.isDateFormat(pattern);
}

/** A cell's value for the add-on: blank is "", a number in a date format is a date. */
export function cellContent(
  cell: ICellData | undefined,
  pattern: string,
  zone: string,
): CellContent {
  const value = cell?.v;
  if (value === undefined || value === null) return '';
  if (cell?.t === CellValueType.BOOLEAN) return value === true || value === 1 || value === '1';
  if (cell?.t === CellValueType.NUMBER) return numberContent(Number(value), pattern, zone);
  return typeof value === 'number' ? numberContent(value, pattern, zone) : value;
}

export function numberContent(value: number, pattern: string, zone: string): number | DateMark {
  return isDatePattern(pattern) ? { $date: serialToInstant(value, zone) } : value;
}

/** A cell's text as the grid shows it. */
export function cellText(cell: ICellData | undefined, pattern: string): string {
  const content = cellContent(cell, '', 'UTC');
  if (typeof content === 'boolean') return content ? 'TRUE' : 'FALSE';
  if (typeof content === 'string') return content;
  return numfmt.format(pattern === '' ? 'General' : pattern, content, { throws: false });
}

/** Changes to a cell that leave nothing of an earlier formula or value behind. */
const CLEARED: ICellData = { f: null, si: null, p: null };

/**
 * What typing `text` into a cell stores: a formula, a number, a date, a truth value or text.
 *
 * @param pattern - number format the cell has; text cells (`@`) keep everything but formulas as text
 */
export function typedCell(text: string, pattern: string): ICellData {
  if (text === '') return { ...CLEARED, v: null, t: null };
  if (text.startsWith('=') && text.length > 1) return { ...CLEARED, f: text, v: null, t: null };
  if (text.startsWith("'")) return { ...CLEARED, v: text.slice(1), t: CellValueType.FORCE_STRING };
  const parsed = core.isTextFormat(pattern) ? null : numfmt.parseValue(text);
  if (typeof parsed?.v === 'boolean') {
    return { ...CLEARED, v: parsed.v ? 1 : 0, t: CellValueType.BOOLEAN };
  }
  if (typeof parsed?.v !== 'number') return { ...CLEARED, v: text, t: CellValueType.STRING };
  const format = pattern === '' && parsed.z ? patternStyle(parsed.z) : {};
  return { ...CLEARED, v: parsed.v, t: CellValueType.NUMBER, ...format };
}

/** What `setValue` stores: text as if typed, numbers and truth values as they are, dates as serials. */
export function storedCell(content: CellContent, pattern: string, zone: string): ICellData {
  if (typeof content === 'string') return typedCell(content, pattern);
  if (typeof content === 'number') return { ...CLEARED, v: content, t: CellValueType.NUMBER };
  if (typeof content === 'boolean') {
    return { ...CLEARED, v: content ? 1 : 0, t: CellValueType.BOOLEAN };
  }
  const serial = instantToSerial(content.$date, zone);
  const own = Number.isInteger(serial) ? 'm/d/yyyy' : 'm/d/yyyy h:mm:ss';
  const format = isDatePattern(pattern) ? {} : patternStyle(own);
  return { ...CLEARED, v: serial, t: CellValueType.NUMBER, ...format };
}

function patternStyle(pattern: string): { readonly s: IStyleData } {
  return { s: { n: { pattern } } };
}
