import type { UnitSystem } from '../../units/measures.ts';

interface ChartPoint {
  /** Round or run, and what came out: `R-1002 round 1`. */
  readonly label: string;
  readonly value: number;
  readonly lower: number;
  readonly upper: number;
}

/** Points that break a run rule. */
export interface ChartSignal {
  /** The rule in a few words: `beyond the limit`. */
  readonly rule: string;
  /** What broke it, in one sentence. */
  readonly text: string;
  /** First and last point, counted from 0. */
  readonly from: number;
  readonly to: number;
}

/** What a control chart shows: shares of bad pieces (0 to 1), or piece weights [kg] with their moving ranges. */
export interface ControlChart {
  readonly kind: 'share-chart' | 'weight-chart';
  readonly title: string;
  readonly system: UnitSystem;
  /** What a point is: `round`, `run`, `piece`. */
  readonly each: string;
  readonly center: number;
  readonly points: readonly ChartPoint[];
  readonly signals: readonly ChartSignal[];
  /** Few points so far: the limits will still move. */
  readonly isProvisional: boolean;
  /** Differences of neighbors, the first of them at the second point. */
  readonly ranges?: {
    readonly values: readonly number[];
    readonly mean: number;
    readonly limit: number;
  };
}
