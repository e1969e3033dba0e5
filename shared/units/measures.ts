import type { UnitName } from './units.ts';

/** The two customary systems a shop chooses between. */
export type UnitSystem = 'US' | 'metric';

/** What is measured on the bench, and the unit in which each system writes it. */
export type Measure = Readonly<Record<UnitSystem, UnitName>>;

/** Every measure that a cell, a form field or the run sheet shows. */
export const MEASURES = {
  liquidVolume: { US: 'floz', metric: 'mL' },
  dropVolume: { US: 'uL', metric: 'uL' },
  spoonVolume: { US: 'tsp', metric: 'mL' },
  baseMass: { US: 'oz', metric: 'g' },
  doseMass: { US: 'g', metric: 'g' },
  bulkMass: { US: 'lb', metric: 'kg' },
  length: { US: 'in', metric: 'mm' },
  elevation: { US: 'ft', metric: 'm' },
  temperature: { US: 'degF', metric: 'degC' },
  temperatureDifference: { US: 'differenceF', metric: 'differenceC' },
  seconds: { US: 's', metric: 's' },
  minutes: { US: 'min', metric: 'min' },
  hours: { US: 'h', metric: 'h' },
  density: { US: 'gPerML', metric: 'gPerML' },
  power: { US: 'W', metric: 'W' },
  energy: { US: 'kWh', metric: 'kWh' },
  conductance: { US: 'WPerM2K', metric: 'WPerM2K' },
  conductivity: { US: 'WPerMK', metric: 'WPerMK' },
  specificHeat: { US: 'JPerKgK', metric: 'JPerKgK' },
  pigmentCover: { US: 'gPerM2', metric: 'gPerM2' },
  /** Held as a fraction; a cell's number format shows it as per cent. */
  fraction: { US: 'fraction', metric: 'fraction' },
} as const satisfies Readonly<Record<string, Measure>>;

export type MeasureName = keyof typeof MEASURES;
