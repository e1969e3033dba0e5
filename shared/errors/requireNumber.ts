import type { UnitName } from '../units/units.ts';
import { InputError, type Rule } from './InputError.ts';

/** Bounds of a number, in the same unit as the number. The same shape declares a sheet function's parameter. */
export interface Bounds {
  readonly greaterThan?: number;
  readonly atLeast?: number;
  readonly lessThan?: number;
  readonly atMost?: number;
  readonly whole?: true;
}

/**
 * Throws unless `value` is a finite number inside the bounds.
 * @param field the words the user sees, e.g. `cavity volume`
 * @throws InputError naming field, rule, value, unit
 */
export function requireNumber(
  value: number,
  field: string,
  bounds: Bounds & { readonly unit?: UnitName } = {},
): void {
  const rule = brokenRule(value, bounds);
  if (rule === undefined) return;
  throw new InputError({ field, rule, value, ...(bounds.unit ? { unit: bounds.unit } : {}) });
}

/** The first rule that `value` breaks, or undefined. */
export function brokenRule(value: number, bounds: Bounds): Rule | undefined {
  if (typeof value !== 'number' || !Number.isFinite(value)) return { kind: 'number' };
  if (bounds.greaterThan !== undefined && value <= bounds.greaterThan)
    return { kind: 'greater than', limit: bounds.greaterThan };
  if (bounds.atLeast !== undefined && value < bounds.atLeast)
    return { kind: 'at least', limit: bounds.atLeast };
  if (bounds.lessThan !== undefined && value >= bounds.lessThan)
    return { kind: 'less than', limit: bounds.lessThan };
  if (bounds.atMost !== undefined && value > bounds.atMost)
    return { kind: 'at most', limit: bounds.atMost };
  if (bounds.whole && !Number.isInteger(value)) return { kind: 'whole number' };
  return undefined;
}
