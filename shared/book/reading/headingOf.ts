import { findUnit } from '../../units/findUnit.ts';
import { MEASURES, type UnitSystem } from '../../units/measures.ts';
import { UNITS, type UnitName } from '../../units/units.ts';
import type { Column } from '../column.ts';

/** The heading cell of a column: its words and, in parentheses, the unit of its numbers. */
export function headingOf(column: Column, system: UnitSystem): string {
  const unit = unitOf(column, system);
  const label = unit ? UNITS[unit].label : '';
  return label ? `${column.heading} (${label})` : column.heading;
}

/** The unit that a system writes the column's numbers in, or undefined where there is none. */
export function unitOf(column: Column, system: UnitSystem): UnitName | undefined {
  return column.kind === 'number' && column.measure ? MEASURES[column.measure][system] : undefined;
}

/**
 * The unit that a heading cell states. The heading is the truth: a column headed `Cavity volume (mL)` holds milliliters
 * whatever the shop's system is.
 * @returns undefined when the words are another column's, `'unreadable'` when the unit is not one of this quantity
 */
export function readHeading(
  column: Column,
  text: string,
): { readonly unit: UnitName | undefined } | 'unreadable' | undefined {
  const [, words = '', label = ''] = /^\s*(.*?)\s*(?:\(([^()]*)\))?\s*$/.exec(text) ?? [];
  if (words.toLowerCase() !== column.heading.toLowerCase()) return undefined;
  const usual = unitOf(column, 'US');
  if (usual === undefined) return { unit: usual };
  const unit = findUnit(label, usual);
  return unit ? { unit } : 'unreadable';
}
