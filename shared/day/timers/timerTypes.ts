/** Something that a timer tells at a moment. */
export interface TimerCue {
  /** `ready`: go and read or take; `earliest`: may begin; `latest`: must have begun; `too cool`: no longer pours */
  readonly kind: 'ready' | 'earliest' | 'latest' | 'too cool';
  /** From its start [s] */
  readonly after: number;
  /** What to do then, one short sentence without a full stop */
  readonly text: string;
}

/** A timer that can be started for an order. */
export interface TimerChoice {
  /** `plate`, `cup`, `cool`, or `layer 1` for the first layer */
  readonly key: string;
  /** What has just happened when it is started */
  readonly label: string;
  readonly cues: readonly TimerCue[];
}

/** A timer that runs; kept in the book. */
export interface RunningTimer extends TimerChoice {
  readonly id: string;
  readonly order: string;
  /** Milliseconds of the clock everybody shares, from 1970 */
  readonly startedAt: number;
}
