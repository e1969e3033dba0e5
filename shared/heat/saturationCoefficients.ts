/** Where the formulation's saturation line begins and ends: triple-point side and critical point. */
export const SATURATION_RANGE = {
  temperature: { atLeast: 0, atMost: 373.946 }, // °C
  pressure: { atLeast: 611.212, atMost: 22.064e6 }, // Pa, as the equation itself gives them
} as const;

/**
 * The ten coefficients n1 to n10 of the saturation line's quadratic.
 * @source IAPWS97, region 4, Table 34
 */
export const SATURATION_COEFFICIENTS = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5,
  -0.32325550322333e7, 0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6,
  -0.23855557567849, 0.65017534844798e3,
] as const;
