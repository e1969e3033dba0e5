import type { TornJoint } from '../../quality/bond/bondFit.ts';
import type { UnitSystem } from '../../units/measures.ts';

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
