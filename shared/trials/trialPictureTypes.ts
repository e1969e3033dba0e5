import type { HeatDetail } from '../plan/uncertainty/heatDetail.ts';
import type { TornJoint } from '../quality/bond/bondFit.ts';
import type { UnitSystem } from '../units/measures.ts';

/** What the picture of a bond fit shows: torn joints and the chance to bond, against the contact temperature [degC]. */
export interface BondPictured {
  readonly kind: 'bond';
  readonly title: string;
  readonly system: UnitSystem;
  /** Bond temperature that plans are made with now */
  readonly inUse: number;
  readonly joints: readonly TornJoint[];
  /** Logit of the chance; absent where nothing was fitted */
  readonly curve?: { readonly intercept: number; readonly slope: number };
  readonly threshold?: { readonly value: number; readonly low: number; readonly high: number };
}

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
