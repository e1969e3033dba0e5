/** Half-open: from is in, to is not. Times are whole units of the caller's choice, counted from the plan's start. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Something that tasks use and give back: a machine, a plate, a person, a circuit. */
export interface Resource {
  readonly id: string;
  /** Whole, >= 1 */
  readonly capacity: number;
  /** When it can be used, in order, not touching each other; left out means always. */
  readonly open?: readonly Span[];
}

export interface Demand {
  readonly resource: string;
  /** Whole, >= 1 */
  readonly amount: number;
}

/** One way to serve a use: everything in it is taken together. The first is what the choice is about. */
export type Mode = readonly Demand[];

export interface Task {
  readonly id: string;
  /** Whole, >= 0. Never interrupted: it fits between two closings. */
  readonly duration: number;
  /** Each use is served in any one of its ways, the first that is free; a task takes no resource twice. */
  readonly uses?: readonly (readonly Mode[])[];
  /** Not before this */
  readonly release?: number;
  /** Finished by this, or late */
  readonly due?: number;
  /** Cost of being late by one unit of time, > 0; 1 if left out */
  readonly weight?: number;
  /** It has started, whatever else is going on then: it takes what it takes, even beyond a capacity. */
  readonly startedAt?: number;
}

/** One task after another, from the finish (or the start) of the one to the start of the other. */
export interface Link {
  readonly before: string;
  readonly after: string;
  readonly from?: 'finish' | 'start';
  /** Least wait, whole, >= 0; 0 if left out */
  readonly least?: number;
  /** Longest wait, whole: a hard window. */
  readonly most?: number;
  /** Placed in one go: what else the one after waits for comes first, so that it need not stand behind the one before. */
  readonly isTogether?: true;
}

/** What stays taken from the start of one task to the finish of another, whatever lies between. */
export interface Hold {
  readonly id: string;
  readonly first: string;
  readonly last: string;
  readonly modes: readonly Mode[];
}

export interface SchedulingProblem {
  readonly resources: readonly Resource[];
  readonly tasks: readonly Task[];
  readonly links: readonly Link[];
  readonly holds?: readonly Hold[];
}

/** What counts, in this order. */
export interface Cost {
  /** Sum of weight x time past its due, over all tasks that have one */
  readonly lateness: number;
  /** When the last task is finished */
  readonly finish: number;
}

export interface ScheduledTask extends Span {
  readonly id: string;
  readonly takes: readonly Demand[];
}

export interface Schedule {
  readonly kind: 'schedule';
  /** In the order of the problem's tasks */
  readonly tasks: readonly ScheduledTask[];
  readonly holds: readonly ScheduledTask[];
  readonly cost: Cost;
  /** No schedule has a lower lateness, none an earlier finish. */
  readonly bound: Cost;
  /** Schedules built, at most what was asked for; fewer where the bound was met */
  readonly iterations: number;
}

/** There is none, or none was found: which tasks stand in the way, and why. */
export interface NoSchedule {
  readonly kind: 'no schedule';
  readonly why: 'circle' | 'window' | 'no room';
  readonly because: string;
  /** The tasks concerned; of a window, the one before and the one after */
  readonly tasks: readonly string[];
}
