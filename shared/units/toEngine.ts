import { UNITS, type Unit, type UnitName } from './units.ts';

/**
 * A value in the engine's own unit of its quantity.
 * @param value in [unit]
 * @returns value in the engine's unit [m, m3, kg, degC, K, s, …]
 */
export function toEngine(value: number, unit: UnitName): number {
  const { factor, offset = 0 }: Unit = UNITS[unit];
  return (value + offset) * factor;
}

/**
 * A value of the engine in a unit the user reads. The inverse of {@link toEngine}.
 * @param value in the engine's unit
 * @returns value in [unit]
 */
export function fromEngine(value: number, unit: UnitName): number {
  const { factor, offset = 0 }: Unit = UNITS[unit];
  return value / factor - offset;
}
