import { requireNumber } from '../errors/requireNumber.ts';

const GRAVITY = 9.80665; // m/s2
const GAS_CONSTANT = 8314.32; // J/(kmol K), the standard's own value
const MOLAR_MASS = 28.9644; // kg/kmol, dry air
const LAPSE_RATE = 0.0065; // K/m
const EARTH_RADIUS = 6_356_766; // m, the standard's effective radius
const SEA_LEVEL_PRESSURE = 101_325; // Pa
const SEA_LEVEL_TEMPERATURE = 288.15; // K

/** Elevations that the standard's lowest layer holds for [m]. */
const ELEVATION_RANGE = { atLeast: -5000, atMost: 11_000 } as const;

/**
 * Air temperature of the standard atmosphere at an elevation; not the room's.
 * @param elevation - geometric height above sea level [m], -5000 to 11 000
 * @returns [°C]
 * @throws InputError outside the range
 * @source USSA76, part 1, layer from sea level to 11 km
 */
export function airTemperature(elevation: number): number {
  requireNumber(elevation, 'elevation', { unit: 'm', ...ELEVATION_RANGE });
  return SEA_LEVEL_TEMPERATURE - LAPSE_RATE * geopotential(elevation) - 273.15;
}

/**
 * Air pressure of the standard atmosphere at an elevation.
 *
 * p = p0 (1 - L H / T0)^(g M / (R L)) with H = r Z / (r + Z), lapse rate L, radius r, height Z.
 * The day's weather moves the true pressure by about 3 %, the boiling point of water by about 1 K.
 *
 * @param elevation - geometric height above sea level [m], -5000 to 11 000
 * @returns [Pa]
 * @throws InputError outside the range
 * @source USSA76, part 1, layer from sea level to 11 km
 */
export function airPressure(elevation: number): number {
  requireNumber(elevation, 'elevation', { unit: 'm', ...ELEVATION_RANGE });
  const exponent = (GRAVITY * MOLAR_MASS) / (GAS_CONSTANT * LAPSE_RATE);
  const ratio = 1 - (LAPSE_RATE * geopotential(elevation)) / SEA_LEVEL_TEMPERATURE;
  return SEA_LEVEL_PRESSURE * ratio ** exponent;
}

function geopotential(elevation: number): number {
  return (EARTH_RADIUS * elevation) / (EARTH_RADIUS + elevation);
}
