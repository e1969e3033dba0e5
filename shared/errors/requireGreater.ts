import type { UnitName } from '../units/units.ts';
import { InputError } from './InputError.ts';

/** A number with the words the user sees for it. */
export interface NamedNumber {
  readonly field: string;
  readonly value: number;
}

/**
 * Throws unless the first number is greater than the second.
 * @throws InputError `pour temperature must be greater than mold temperature (100 °C), got 90 °C`
 */
export function requireGreater(first: NamedNumber, second: NamedNumber, unit: UnitName): void {
  if (first.value > second.value) return;
  throw new InputError({
    field: first.field,
    rule: { kind: 'greater than', limit: second.value, what: second.field },
    value: first.value,
    unit,
  });
}
