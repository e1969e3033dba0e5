import type { Bounds } from '../../errors/requireNumber.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import { UNITS, type UnitName } from '../../units/units.ts';
import type { Column } from '../column.ts';
import { boundsIn } from '../reading/parseCell.ts';

/**
 * The note on a heading: what to type, whether it must be given, and within which limits.
 * @param unit the unit that the heading states
 * @param about the column's own text, which the running script does not carry
 */
export function headingNote(column: Column, unit: UnitName | undefined, about: string): string {
  const parts = [about];
  if (column.required) parts.push('Required.');
  if (column.kind === 'choice') parts.push(`One of: ${column.choices.join(', ')}.`);
  if (column.kind === 'computed') parts.push('Fills itself: type nothing in this column.');
  if (column.kind === 'number' && column.bounds) parts.push(...limitTexts(column.bounds, unit));
  return parts.join(' ');
}

/** Limits as sentences, in the unit a person types; none where there is no limit. */
export function limitTexts(bounds: Bounds, unit: UnitName | undefined): readonly string[] {
  const limits = unit ? boundsIn(bounds, unit) : bounds;
  const words = [
    ...wordsFor('Greater than', limits.greaterThan, unit),
    ...wordsFor('At least', limits.atLeast, unit),
    ...wordsFor('Less than', limits.lessThan, unit),
    ...wordsFor('At most', limits.atMost, unit),
  ];
  return limits.whole ? [...words, 'Whole numbers.'] : words;
}

function wordsFor(
  rule: string,
  limit: number | undefined,
  unit: UnitName | undefined,
): readonly string[] {
  if (limit === undefined) return [];
  if (unit === 'fraction') return [`${rule} ${formatPlain(limit * 100)} %.`];
  const label = unit ? UNITS[unit].label : '';
  return [`${rule} ${formatPlain(limit)}${label ? ` ${label}` : ''}.`];
}
