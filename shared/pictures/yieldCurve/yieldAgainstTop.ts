import type { UnitSystem } from '../../units/measures.ts';

/** What the yield picture shows: rounds by their mold top [degC], the curve through them and its band. */
export interface YieldAgainstTop {
  readonly kind: 'yield-curve';
  readonly title: string;
  readonly system: UnitSystem;
  readonly rounds: readonly {
    readonly moldTop: number;
    readonly poured: number;
    readonly good: number;
  }[];
  readonly curve: readonly {
    readonly moldTop: number;
    readonly rate: number;
    readonly low: number;
    readonly high: number;
  }[];
  /** Boiling point of water at the shop, which the plan wants the mold top to reach [degC]. */
  readonly boilingPoint: number;
  /** What the curve says and what it does not, one sentence each. */
  readonly says: readonly string[];
}
