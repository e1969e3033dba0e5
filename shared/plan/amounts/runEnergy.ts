/** Electricity of a run [J]. */
export interface RunEnergy {
  /** First heat-up, holding while every round is poured, and heating again between rounds; absent where the mold never gets hot enough */
  readonly plate?: number;
  /** What the microwave takes from the wall */
  readonly oven: number;
}
