import { UNITS, type UnitName } from './units.ts';

/**
 * The unit that a label names among those of the same quantity as the usual one; a blank label is the usual unit where
 * that has none.
 * @returns undefined when no unit of the quantity has this label
 */
export function findUnit(label: string, usual: UnitName): UnitName | undefined {
  if (label === '' && UNITS[usual].label === '') return usual;
  const names = Object.keys(UNITS) as UnitName[]; // keys of the one table of units
  return names.find(
    (name) => UNITS[name].quantity === UNITS[usual].quantity && UNITS[name].label === label,
  );
}
