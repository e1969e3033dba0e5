import { MEASURES, type UnitSystem } from '../units/measures.ts';
import { fromEngine, toEngine } from '../units/toEngine.ts';
import { type Quantity, UNITS, type UnitName } from '../units/units.ts';
import { describe } from './describe.ts';
import type { InputFacts, Rule } from './InputError.ts';

/** The unit in which a system names a quantity of the engine. */
const SPOKEN: Readonly<Partial<Record<Quantity, keyof typeof MEASURES>>> = {
  length: 'length',
  volume: 'liquidVolume',
  mass: 'baseMass',
  temperature: 'temperature',
  'temperature difference': 'temperatureDifference',
  density: 'density',
};

const ENGINE_UNITS: readonly UnitName[] = ['m', 'm3', 'kg', 'degC', 'differenceC', 'kgPerM3'];

/**
 * The sentence of an error in the user's units. An error already in a unit people write (mm, fl oz, °F) keeps it;
 * one in the engine's own unit (m, m³, kg, °C) is turned into the system's.
 */
export function describeIn(error: InputFacts, system: UnitSystem): string {
  const { unit } = error;
  const measure = unit && ENGINE_UNITS.includes(unit) ? SPOKEN[UNITS[unit].quantity] : undefined;
  if (unit === undefined || measure === undefined) return describe(error);
  const spoken = MEASURES[measure][system];
  return describe({
    field: error.field,
    rule: ruleIn(error.rule, unit, spoken),
    value: typeof error.value === 'number' ? convert(error.value, unit, spoken) : error.value,
    unit: spoken,
  });
}

function ruleIn(rule: Rule, from: UnitName, to: UnitName): Rule {
  return 'limit' in rule ? { ...rule, limit: convert(rule.limit, from, to) } : rule;
}

function convert(value: number, from: UnitName, to: UnitName): number {
  return fromEngine(toEngine(value, from), to);
}
