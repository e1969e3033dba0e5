import { requireNumber } from '../errors/requireNumber.ts';

/** Rows of a curve: more than a chart shows. */
const MOST_POINTS = 499;

/** How long a curve is and how fine, with its usual figures in seconds. */
export function curveParameters(shown: number, between: number) {
  return {
    shown: {
      kind: 'number',
      field: 'minutes to show',
      measure: 'minutes',
      about: 'Length of the curve.',
      bounds: { greaterThan: 0, atMost: 43_200 },
      default: shown,
    },
    between: {
      kind: 'number',
      field: 'minutes between rows',
      measure: 'minutes',
      about: 'Time from row to row; at most 500 rows.',
      bounds: { greaterThan: 0, atMost: 43_200 },
      default: between,
    },
  } as const;
}

/**
 * Times of a curve's rows.
 * @throws InputError for more rows than a table may have
 */
export function curveTimes(shown: number, between: number): readonly number[] {
  const least = shown / MOST_POINTS / 60;
  requireNumber(between / 60, 'minutes between rows', { unit: 'min', atLeast: least });
  const count = Math.floor(shown / between + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => index * between);
}
