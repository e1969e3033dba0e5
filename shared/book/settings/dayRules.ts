/** How a shop works, where the plan of a run does not say it. */
export interface DayRules {
  /** Share of the heat-up, at its start, that someone is at it: placing, switching on, reading */
  readonly heatAttended: number;
  /** Longest that hot molds wait on the plate beyond their spare time [s] */
  readonly hotWait: number;
  /** Rest after each burst of the oven, for stirring and reading [s] */
  readonly cookRest: number;
  /** At the top temperature, stirred through [s] */
  readonly stirThrough: number;
  /** Share of a person that cooking takes */
  readonly cookAttended: number;
  /** Longest from a cooked cup to its pour, touched up on the way [s] */
  readonly cupWait: number;
  /** Topping off one cavity [s] */
  readonly topOff: number;
  /** Share of the set-up work before the run; the rest is cleaning after it */
  readonly layOutShare: number;
  /** Shares of the finishing work; packing is the rest */
  readonly demoldShare: number;
  readonly inspectShare: number;
  /** Cleaning scale, spoons and bench between two colors [s] */
  readonly colorChange: number;
  /** Orders of the same colors are weighed together when they are due within this of each other [s] */
  readonly batchWithin: number;
  /** As long as that together takes no longer than this [s] */
  readonly longestBatch: number;
  /** Longest pause between two orders of a batch, the bench being taken meanwhile [s] */
  readonly batchPause: number;
}

/** Common practice, no source. */
export const DAY_RULES: DayRules = {
  heatAttended: 0.1,
  hotWait: 1800,
  cookRest: 20,
  stirThrough: 60,
  cookAttended: 0.5,
  cupWait: 1200,
  topOff: 3,
  layOutShare: 0.5,
  demoldShare: 0.4,
  inspectShare: 0.4,
  colorChange: 600,
  batchWithin: 86_400,
  longestBatch: 7200,
  batchPause: 900,
};
