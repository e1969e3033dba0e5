import { DEFAULTS } from '../material/defaults.ts';
import { NOT_NEGATIVE, POSITIVE } from './positive.ts';

/** Parameters that functions of the batch family share. */
export const BASE_DENSITY = {
  kind: 'number',
  measure: 'density',
  about: 'Cold density of the plastisol.',
  bounds: POSITIVE,
  default: DEFAULTS.density.value,
} as const;
export const CUP_FILL = {
  kind: 'number',
  measure: 'liquidVolume',
  about: 'Most hot plastisol in one cup.',
  bounds: POSITIVE,
  default: 1.774e-4,
} as const;
export const TEMPERATURE_RISE = {
  kind: 'number',
  measure: 'temperatureDifference',
  about: 'From weighing to pouring; hot plastisol takes more room.',
  bounds: NOT_NEGATIVE,
  default: 143,
} as const;
