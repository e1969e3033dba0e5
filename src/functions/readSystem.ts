import { InputError } from '../../shared/errors/InputError.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { type CellArgument, isBlankArgument, isRange } from './cellArgument.ts';

const SYSTEMS = ['US', 'metric'] as const;

/** The optional last argument of every sheet function. @throws InputError for anything but US or metric */
export function readSystem(value: CellArgument): UnitSystem {
  const cell = isRange(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value;
  if (isBlankArgument(cell)) return 'US';
  const text = String(cell).trim().toLowerCase();
  const system = SYSTEMS.find((one) => one.toLowerCase() === text);
  if (system === undefined)
    throw new InputError({
      field: 'units',
      rule: { kind: 'one of', choices: SYSTEMS },
      value: isRange(value) ? 'a range' : cell,
    });
  return system;
}
