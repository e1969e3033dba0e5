import { formatPlain } from '../units/formatPlain.ts';
import { UNITS, type UnitName } from '../units/units.ts';
import type { InputFacts, Rule } from './InputError.ts';

/** One sentence for the user: field, rule, value, unit. `thickness must be greater than 0 mm, got -3 mm`. */
export function describe(error: InputFacts): string {
  return `${error.field} ${ruleWords(error.rule, error.unit)}, got ${valueWords(error.value, error.unit)}`;
}

function ruleWords(rule: Rule, unit: UnitName | undefined): string {
  switch (rule.kind) {
    case 'given':
      return unit && UNITS[unit].label ? `must be given (${UNITS[unit].label})` : 'must be given';
    case 'number':
      return unit && UNITS[unit].label
        ? `must be a number (${UNITS[unit].label})`
        : 'must be a number';
    case 'whole number':
      return 'must be a whole number';
    case 'greater than':
    case 'at least':
    case 'less than':
    case 'at most': {
      const limit = numberWords(rule.limit, unit);
      return `must be ${rule.kind} ${rule.what ? `${rule.what} (${limit})` : limit}`;
    }
    case 'one of':
      return `must be one of ${rule.choices.join(', ')}`;
    case 'known':
      return `must be listed in ${rule.where}`;
    case 'form':
      return `must be ${rule.wanted}`;
  }
}

function valueWords(value: unknown, unit: UnitName | undefined): string {
  if (value === '' || value === null || value === undefined) return 'nothing';
  if (typeof value === 'number') return numberWords(value, unit);
  if (typeof value === 'string') return `"${value.length > 40 ? `${value.slice(0, 40)}…` : value}"`;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (Array.isArray(value)) return value.map((one) => valueWords(one, unit)).join(' and ');
  return 'a date';
}

function numberWords(value: number, unit: UnitName | undefined): string {
  const label = unit && Number.isFinite(value) ? UNITS[unit].label : '';
  return label ? `${formatPlain(value)} ${label}` : formatPlain(value);
}
