import type { HeatDetail } from '../../plan/uncertainty/heatDetail.ts';
import type { UnitSystem } from '../../units/measures.ts';

/** What the trial picture shows: readings of a mold top and the curve fitted to them; [s], [degC]. */
export interface HeatTrialPictured {
  readonly kind: 'heat-trial';
  /** Mold and plate */
  readonly title: string;
  readonly system: UnitSystem;
  readonly target?: number;
  readonly curve: readonly { readonly seconds: number; readonly top: number }[];
  readonly readings: HeatDetail['readings'];
}

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
