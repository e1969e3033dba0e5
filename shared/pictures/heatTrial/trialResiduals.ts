import type { HeatTrialPictured } from '../../trials/trialPictureTypes.ts';

/** Reading less curve, the curve straight between its points [K]; left out where the curve does not reach. */
export function trialResiduals({ curve, readings }: HeatTrialPictured) {
  return readings.flatMap((reading) => {
    const after = curve.findIndex(({ seconds }) => seconds >= reading.seconds);
    const [from, to] = [curve[Math.max(after - 1, 0)], curve[after]];
    if (from === undefined || to === undefined || reading.seconds < from.seconds) return [];
    const share =
      to.seconds === from.seconds
        ? 0
        : (reading.seconds - from.seconds) / (to.seconds - from.seconds);
    return [{ ...reading, residual: reading.top - (from.top + share * (to.top - from.top)) }];
  });
}
