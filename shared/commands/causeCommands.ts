import type { CausesSummary } from '../outcomes/causes/causesSummary.ts';

export interface CausesPayload {
  /** Row of *Pour log*, as text. */
  readonly row?: string | undefined;
  /** `selected` takes the row of the current cell and refuses where that is none of *Pour log*. */
  readonly from?: 'selected' | undefined;
}

export interface CausesAnswer extends CausesSummary {
  readonly kind: 'ok';
}

interface CausesShown {
  readonly kind: 'ok';
}

/** Commands of what went wrong. With neither, the round of the current cell is taken, else the last that came out bad. */
export interface CauseCommands {
  readonly causesFor: { readonly payload: CausesPayload; readonly answer: CausesAnswer };
  readonly showCauses: { readonly payload: CausesPayload; readonly answer: CausesShown };
}
