import { DEFECT_KEYS } from '../book/tables/pourLog.ts';
import type { PourLogRecord } from '../book/tables.ts';
import type { UnitSystem } from '../units/measures.ts';
import { fromEngine } from '../units/toEngine.ts';
import { FORM_KEYS, type FormKey, formUnit } from './formColumn.ts';

/**
 * A row of the log as its fields would be typed in the shop's units, to be corrected. A kind of defect that did not occur is
 * blank.
 */
export function typedOutcome(
  record: PourLogRecord,
  system: UnitSystem,
): Readonly<Partial<Record<FormKey, string>>> {
  const typed: Partial<Record<FormKey, string>> = {};
  const defects: readonly FormKey[] = DEFECT_KEYS;
  for (const key of FORM_KEYS) {
    const value = record[key];
    if (value === undefined || (value === 0 && defects.includes(key))) continue;
    typed[key] = typeof value === 'number' ? typedNumber(value, key, system) : value;
  }
  return typed;
}

/** Without the last binary digits of a conversion there and back: 214, not 214.00000000000003. */
function typedNumber(value: number, key: FormKey, system: UnitSystem): string {
  const unit = formUnit(key, system);
  return String(Number((unit ? fromEngine(value, unit) : value).toPrecision(12)));
}
