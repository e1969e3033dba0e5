const STEFAN_BOLTZMANN = 5.670374419e-8; // W/(m2 K4), exact in the SI
const ZERO_CELSIUS = 273.15; // K

/**
 * Net radiation from a small gray body to a large room: q = eps sigma (T^4 - T_room^4), T in kelvin.
 * @param emissivity - 0 to 1
 * @param temperature - of the surface [°C]
 * @param roomTemperature - of the walls [°C]
 * @returns [W/m2], below 0 when the walls are warmer
 * @source INCROPERA, equation 1.7
 */
export function radiantFlux(
  emissivity: number,
  temperature: number,
  roomTemperature: number,
): number {
  const hot = temperature + ZERO_CELSIUS;
  const cold = roomTemperature + ZERO_CELSIUS;
  return emissivity * STEFAN_BOLTZMANN * (hot ** 4 - cold ** 4);
}

/**
 * The same as a coefficient on the temperature difference: h_r = eps sigma (T + T_room) (T^2 + T_room^2).
 * @param emissivity - 0 to 1
 * @param temperature - of the surface [°C]
 * @param roomTemperature - of the walls [°C]
 * @returns [W/(m2 K)]
 * @source INCROPERA, equation 1.9
 */
export function radiationCoefficient(
  emissivity: number,
  temperature: number,
  roomTemperature: number,
): number {
  const hot = temperature + ZERO_CELSIUS;
  const cold = roomTemperature + ZERO_CELSIUS;
  return emissivity * STEFAN_BOLTZMANN * (hot + cold) * (hot ** 2 + cold ** 2);
}
