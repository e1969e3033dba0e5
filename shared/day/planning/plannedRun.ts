import type { WorkTimes } from '../../batch/minutesOfWork.ts';

/** When a layer may follow the one below, in the same cavity [s]. */
type PlannedWindow =
  | { readonly kind: 'between'; readonly earliest: number; readonly latest: number }
  | { readonly kind: 'from'; readonly earliest: number }
  | { readonly kind: 'none'; readonly because: string };

export interface RunLayer {
  readonly layer: string;
  /** For the whole order */
  readonly cups: number;
  readonly run: {
    /** From the first pour of the round [s] */
    readonly firstAt: number;
    /** Through all cavities of a round, stops included [s] */
    readonly passTime: number;
    /** In the same cavity since the layer below: shortest and longest of the round [s] */
    readonly wait?: { readonly shortest: number; readonly longest: number };
  };
  /** On the layer below */
  readonly window?: PlannedWindow;
}

/** What the day takes from an order's plan; the plan of a run has this shape. */
export interface PlannedRun {
  readonly order: string;
  readonly mold: string;
  readonly moldsInUse: number;
  readonly pattern: string;
  readonly version: number;
  readonly pieces: {
    readonly toPour: number;
    readonly rounds: number;
    readonly perRound: number;
  };
  readonly layers: readonly RunLayer[];
  readonly plate:
    | {
        readonly kind: 'reachable';
        readonly plate: string;
        /** Cold plate, mold on it, to a hot mold top [s] */
        readonly heatUp: number;
        /** Spare time between that and the first pour [s] */
        readonly readyWait: number;
      }
    | { readonly kind: 'unreachable'; readonly because: string };
  /** Oven's running time for one cup from cold [s], and in how many bursts */
  readonly cookTime: number;
  readonly cookBursts: number;
  /** Off the plate until pieces may come out [s] */
  readonly coolTime: number;
  /** Hands-on time of the whole run [s] */
  readonly work: WorkTimes;
}
