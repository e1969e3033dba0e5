/** What a number measures. The engine's own unit of each quantity has factor 1 in {@link UNITS}. */
export type Quantity =
  | 'length'
  | 'volume'
  | 'mass'
  | 'temperature'
  | 'temperature difference'
  | 'time'
  | 'density'
  | 'power'
  | 'energy'
  | 'pressure'
  | 'heat transfer coefficient'
  | 'thermal conductivity'
  | 'specific heat'
  | 'mass per area'
  | 'fraction';

export interface Unit {
  readonly quantity: Quantity;
  /** How the unit is written beside a number. */
  readonly label: string;
  /** Engine units in one of this unit. */
  readonly factor: number;
  /** Added to a value in this unit before the factor applies; only temperatures have one. */
  readonly offset?: number;
}

const INCH = 0.0254;
const FOOT = 12 * INCH;
const POUND = 0.45359237;
const OUNCE = POUND / 16;
const GALLON = 231 * INCH ** 3;
const FLUID_OUNCE = GALLON / 128;
const TEASPOON = FLUID_OUNCE / 6;
const MILLILITER = 1e-6;

/**
 * Every unit, once. Only defining factors are typed (inch, pound, gallon of 231 cubic inches); the rest is arithmetic.
 * Engine units: m, m3, kg, degC, K, s, kg/m3, W, J, Pa, W/(m2 K), W/(m K), J/(kg K), kg/m2, 1.
 * @source HB44, Appendix C section 4; SP811, Appendix B.8
 */
export const UNITS = {
  m: { quantity: 'length', label: 'm', factor: 1 },
  mm: { quantity: 'length', label: 'mm', factor: 0.001 },
  in: { quantity: 'length', label: 'in', factor: INCH },
  ft: { quantity: 'length', label: 'ft', factor: FOOT },

  m3: { quantity: 'volume', label: 'm³', factor: 1 },
  mL: { quantity: 'volume', label: 'mL', factor: MILLILITER },
  uL: { quantity: 'volume', label: 'µL', factor: MILLILITER / 1000 },
  floz: { quantity: 'volume', label: 'fl oz', factor: FLUID_OUNCE },
  cup: { quantity: 'volume', label: 'cup', factor: 8 * FLUID_OUNCE },
  gal: { quantity: 'volume', label: 'gal', factor: GALLON },
  tsp: { quantity: 'volume', label: 'tsp', factor: TEASPOON },
  in3: { quantity: 'volume', label: 'in³', factor: INCH ** 3 },
  metricDrop: { quantity: 'volume', label: 'metric drop', factor: MILLILITER / 20 },

  kg: { quantity: 'mass', label: 'kg', factor: 1 },
  g: { quantity: 'mass', label: 'g', factor: 0.001 },
  oz: { quantity: 'mass', label: 'oz', factor: OUNCE },
  lb: { quantity: 'mass', label: 'lb', factor: POUND },

  degC: { quantity: 'temperature', label: '°C', factor: 1 },
  degF: { quantity: 'temperature', label: '°F', factor: 1 / 1.8, offset: -32 },
  kelvin: { quantity: 'temperature', label: 'K', factor: 1, offset: -273.15 },
  differenceC: { quantity: 'temperature difference', label: '°C', factor: 1 },
  differenceF: { quantity: 'temperature difference', label: '°F', factor: 1 / 1.8 },

  s: { quantity: 'time', label: 's', factor: 1 },
  min: { quantity: 'time', label: 'min', factor: 60 },
  h: { quantity: 'time', label: 'h', factor: 3600 },

  kgPerM3: { quantity: 'density', label: 'kg/m³', factor: 1 },
  gPerML: { quantity: 'density', label: 'g/mL', factor: 1000 },
  lbPerIn3: { quantity: 'density', label: 'lb/in³', factor: POUND / INCH ** 3 },

  W: { quantity: 'power', label: 'W', factor: 1 },
  J: { quantity: 'energy', label: 'J', factor: 1 },
  kWh: { quantity: 'energy', label: 'kWh', factor: 3.6e6 },
  BtuIT: { quantity: 'energy', label: 'Btu', factor: (4186.8 * POUND) / 1.8 },
  Pa: { quantity: 'pressure', label: 'Pa', factor: 1 },
  hPa: { quantity: 'pressure', label: 'hPa', factor: 100 },
  psi: { quantity: 'pressure', label: 'psi', factor: (POUND * 9.80665) / INCH ** 2 },
  WPerM2K: { quantity: 'heat transfer coefficient', label: 'W/m²·K', factor: 1 },
  WPerMK: { quantity: 'thermal conductivity', label: 'W/m·K', factor: 1 },
  JPerKgK: { quantity: 'specific heat', label: 'J/kg·K', factor: 1 },
  kgPerM2: { quantity: 'mass per area', label: 'kg/m²', factor: 1 },
  gPerM2: { quantity: 'mass per area', label: 'g/m²', factor: 0.001 },
  fraction: { quantity: 'fraction', label: '', factor: 1 },
  percent: { quantity: 'fraction', label: '%', factor: 0.01 },
} as const satisfies Readonly<Record<string, Unit>>;

export type UnitName = keyof typeof UNITS;
