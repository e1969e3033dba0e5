import { InputError } from '../errors/InputError.ts';
import { requireNumber } from '../errors/requireNumber.ts';

/** The least and the greatest value thought possible, and the likeliest; low <= mode <= high. */
export interface Triangle {
  readonly low: number;
  readonly mode: number;
  readonly high: number;
}

/**
 * Value that a triangular distribution stays below with a given chance.
 *
 * Below the mode: low + sqrt(share (high - low)(mode - low)); above it the same from the other end.
 * For a figure known by its range and its usual value alone. Mean (low + mode + high) / 3.
 *
 * @param share - the chance, 0 to 1
 * @throws InputError on a share out of range, or three values out of order
 * @source JOHNSONKOTZ95, section 26.9
 */
export function triangular(share: number, { low, mode, high }: Triangle): number {
  requireNumber(share, 'share', { atLeast: 0, atMost: 1 });
  requireNumber(low, 'low');
  requireNumber(high, 'high', { atLeast: low });
  requireBetween(mode, low, high);
  const width = high - low;
  if (share * width <= mode - low) return low + Math.sqrt(share * width * (mode - low));
  return high - Math.sqrt((1 - share) * width * (high - mode));
}

function requireBetween(mode: number, low: number, high: number): void {
  requireNumber(mode, 'mode');
  const field = 'mode';
  if (mode < low)
    throw new InputError({
      field,
      rule: { kind: 'at least', limit: low, what: 'low' },
      value: mode,
    });
  if (mode > high)
    throw new InputError({
      field,
      rule: { kind: 'at most', limit: high, what: 'high' },
      value: mode,
    });
}
