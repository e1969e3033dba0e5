import { airPressure } from './airPressure.ts';
import { saturationTemperature } from './saturationTemperature.ts';

/**
 * Boiling point of water where the shop stands: the temperature that "the mold top is at boiling" means there.
 *
 * Standard atmosphere, then the saturation line. A day of high or low air pressure shifts it by up to about 1 K.
 *
 * @param elevation - height above sea level [m], -5000 to 11 000
 * @returns [°C]
 * @throws InputError outside the range
 * @source USSA76, part 1; IAPWS97, region 4, equation 31
 */
export function boilingPoint(elevation: number): number {
  return saturationTemperature(airPressure(elevation));
}
