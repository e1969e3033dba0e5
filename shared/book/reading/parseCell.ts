import { InputError } from '../../errors/InputError.ts';
import { type Bounds, brokenRule, requireNumber } from '../../errors/requireNumber.ts';
import { typedChoice } from '../../errors/typedChoice.ts';
import { fromEngine, toEngine } from '../../units/toEngine.ts';
import type { UnitName } from '../../units/units.ts';
import type { Column } from '../column.ts';
import { isErrorCell } from './isErrorCell.ts';
import { parseClock } from './parseClock.ts';

/** What a cell may hold, as the platform hands it over. Dates are turned to `yyyy-mm-dd` text before they come here. */
export type CellValue = string | number | boolean;

/**
 * One cell as the record holds it: engine units, trimmed text, minutes after midnight.
 * @param field the words the user sees, e.g. `cavity volume`
 * @param unit the unit that the column's heading states
 * @throws InputError for an error cell, wrong kind, or a broken bound, in the heading's unit
 */
export function parseCell(
  value: CellValue,
  column: Column,
  { field, unit }: { readonly field: string; readonly unit?: UnitName | undefined },
): string | number {
  if (isErrorCell(value))
    throw new InputError({ field, rule: { kind: 'form', wanted: 'free of errors' }, value });
  switch (column.kind) {
    case 'number':
      return parseNumber(value, field, column.bounds ?? {}, unit);
    case 'money':
      return parseNumber(value, field, column.bounds ?? {}, undefined);
    case 'clock':
      return parseClock(value, field);
    case 'choice':
      return typedChoice(value, field, column.choices);
    case 'date':
      return parseDate(value, field);
    default:
      return String(value).trim();
  }
}

/**
 * A number typed or computed, checked in the unit it was typed in and returned in the engine's.
 * @param bounds in engine units
 */
export function parseNumber(
  value: CellValue,
  field: string,
  bounds: Bounds,
  unit: UnitName | undefined,
): number {
  const facts = unit ? { field, value, unit } : { field, value };
  const typed = typeof value === 'string' ? numberOf(value) : value;
  if (typeof typed !== 'number' || !Number.isFinite(typed))
    throw new InputError({ ...facts, rule: { kind: 'number' } });
  const inEngine = unit ? toEngine(typed, unit) : typed;
  // Limits are turned into the typed unit only for the few that may break one: it costs more than all the rest.
  if (brokenRule(inEngine, bounds))
    requireNumber(typed, field, unit ? { ...boundsIn(bounds, unit), unit } : bounds);
  return inEngine;
}

/** Bounds of the engine in the unit a person types, cleaned of the last binary digits. */
export function boundsIn({ whole, ...limits }: Bounds, unit: UnitName): Bounds {
  const converted: Record<string, number> = {};
  for (const [rule, limit] of Object.entries(limits))
    converted[rule] = Number(fromEngine(limit, unit).toPrecision(12));
  return whole ? { ...converted, whole } : converted;
}

function numberOf(text: string): number {
  const plain = text.trim().replace(/^([\d.+-]+) ?%$/, '$1e-2');
  return plain === '' ? Number.NaN : Number(plain);
}

function parseDate(value: CellValue, field: string): string {
  const text = String(value).trim();
  if (!isDay(text))
    throw new InputError({ field, rule: { kind: 'form', wanted: 'a date' }, value });
  return text;
}

/** A day that the calendar has: `2026-02-30` reads back as another day. */
function isDay(text: string): boolean {
  if (!/^\d{4}-\d\d-\d\d$/.test(text)) return false;
  const instant = Date.parse(text);
  return !Number.isNaN(instant) && new Date(instant).toISOString().startsWith(text);
}
