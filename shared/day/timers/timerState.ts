import type { RunningTimer, TimerCue } from './timerTypes.ts';

/** Where a timer stands: `soon` is the last call before a moment after which it is too late. */
export interface TimerState {
  readonly phase: 'waiting' | 'go' | 'soon' | 'over';
  /** To the next cue [s]; since the last one where no more comes */
  readonly seconds: number;
  /** Whether the seconds count down to something or up from it */
  readonly count: 'down' | 'up';
  readonly text: string;
}

/** Before a latest moment this much is the last call [s]. */
const LAST_CALL = 15;

/**
 * What a timer says now.
 * @param now milliseconds of the clock that its start was taken from
 */
export function timerState({ startedAt, cues }: RunningTimer, now: number): TimerState {
  const since = Math.max(0, (now - startedAt) / 1000);
  const next = cues.find(({ after }) => after > since);
  const passed = cues.filter(({ after }) => after <= since);
  const last = passed[passed.length - 1];
  if (next !== undefined) return before(next, last, next.after - since);
  if (last === undefined) return { phase: 'over', seconds: since, count: 'up', text: '' };
  const isOver = last.kind === 'latest' || last.kind === 'too cool';
  return {
    phase: isOver ? 'over' : 'go',
    seconds: since - last.after,
    count: 'up',
    text: last.text,
  };
}

function before(next: TimerCue, last: TimerCue | undefined, seconds: number): TimerState {
  const isLimit = next.kind === 'latest' || next.kind === 'too cool';
  const count = 'down';
  if (isLimit && seconds <= LAST_CALL)
    return { phase: 'soon', seconds, count, text: last?.text ?? next.text };
  if (last !== undefined) return { phase: 'go', seconds, count, text: last.text };
  // A cup is good to pour until it is too cool; everything else waits for its first cue.
  return { phase: isLimit ? 'go' : 'waiting', seconds, count, text: WAITING[next.kind] };
}

const WAITING: Readonly<Record<TimerCue['kind'], string>> = {
  ready: 'Heat is never left alone',
  earliest: 'Too early: the layer below is still soft',
  latest: 'Pour now',
  'too cool': 'Hot enough to pour',
};

/** What stands beside the seconds. */
export function timerText({ phase, count }: TimerState): string {
  switch (phase) {
    case 'waiting':
      return 'to go';
    case 'go':
      return count === 'down' ? 'left' : 'ready since';
    case 'soon':
      return 'left, last call';
    case 'over':
      return 'over';
  }
}
