import { DEFAULTS } from '../../material/defaults.ts';

/** What the free surface of the plastic loses heat to. */
export interface SurfaceAir {
  /** Convection and radiation together [W/(m2 K)], >= 0; 0 for a closed cavity */
  readonly coefficient: number;
  /** Just above the surface [°C] */
  readonly airTemperature: number;
}

/** How still the air over the mold is. */
export type AirState = 'sheltered' | 'normal' | 'drafty';

/**
 * Surface loss for three states of the air, all inside the ranges of the defaults: under a cover or away from any
 * stream; an ordinary bench; beside a fan, a door or a hood.
 * @source HEATSTUDY, settled surfaces of 3 to 12 mm on a mold at 100 °C
 */
export const AIR_STATES = {
  sheltered: { coefficient: 8, airTemperature: 45 },
  normal: {
    coefficient: DEFAULTS.surfaceCoefficient.value,
    airTemperature: DEFAULTS.localAirTemperature.value,
  },
  drafty: {
    coefficient: DEFAULTS.surfaceCoefficient.high,
    airTemperature: DEFAULTS.localAirTemperature.low,
  },
} as const satisfies Readonly<Record<AirState, SurfaceAir>>;
