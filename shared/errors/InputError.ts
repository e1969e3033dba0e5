import type { UnitName } from '../units/units.ts';

/** The rule that a value broke, as facts. Limits are in the error's unit. */
export type Rule =
  | { readonly kind: 'given' }
  | { readonly kind: 'number' }
  | { readonly kind: 'whole number' }
  | { readonly kind: 'greater than'; readonly limit: number; readonly what?: string }
  | { readonly kind: 'at least'; readonly limit: number; readonly what?: string }
  | { readonly kind: 'less than'; readonly limit: number; readonly what?: string }
  | { readonly kind: 'at most'; readonly limit: number; readonly what?: string }
  | { readonly kind: 'one of'; readonly choices: readonly string[] }
  | { readonly kind: 'known'; readonly where: string }
  | { readonly kind: 'form'; readonly wanted: string };

export interface InputFacts {
  /** The field as the user sees it, e.g. `cavity volume`. */
  readonly field: string;
  readonly rule: Rule;
  /** What was received, in `unit` if a number. */
  readonly value: unknown;
  readonly unit?: UnitName | undefined;
}

/** The one error class: a value that the user can mend. It carries facts; `describe` makes the sentence. */
export class InputError extends RangeError {
  readonly field: string;
  readonly rule: Rule;
  readonly value: unknown;
  readonly unit: UnitName | undefined;

  constructor({ field, rule, value, unit }: InputFacts) {
    super(`${field}: ${rule.kind}`);
    this.name = 'InputError';
    this.field = field;
    this.rule = rule;
    this.value = value;
    this.unit = unit;
  }
}
