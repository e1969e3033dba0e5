/** What the Pareto picture shows: bad pieces by what was wrong, the most first. */
export interface DefectPareto {
  readonly kind: 'defect-pareto';
  readonly title: string;
  readonly bars: readonly {
    readonly name: string;
    readonly count: number;
    readonly share: number;
    readonly cumulated: number;
  }[];
}
