import { type TimerState, timerState, timerText } from '../../shared/day/timers/timerState.ts';
import type { RunningTimer } from '../../shared/day/timers/timerTypes.ts';
import { stopwatchText } from '../../shared/words/quantityText.ts';
import type { Store } from '../panel/store.ts';
import { playCue } from './playCue.ts';

/** Twice a second, so that no second is skipped on show [ms]. */
const EVERY = 500;

/** Most urgent first. */
const URGENCY: readonly TimerState['phase'][] = ['over', 'soon', 'go', 'waiting'];

/** Keeps the seconds on show going, sounds each cue when it comes, and says the most urgent timer above every view. */
export function startTimerClock(store: Store): void {
  const heard = new Map<string, TimerState['phase']>();
  const beat = () => {
    const { timers } = store.get();
    const states = (timers ?? []).map((timer) => ({ timer, state: timerState(timer, Date.now()) }));
    for (const { timer, state } of states) {
      const before = heard.get(timer.id);
      heard.set(timer.id, state.phase);
      // A timer that was started elsewhere, or while the panel was closed, is shown as it stands and not sounded again.
      if (before !== undefined && before !== state.phase) playCue(state.phase);
      drawTimer(timer.id, state);
    }
    drawStrip(states, timers === undefined);
  };
  beat();
  window.setInterval(beat, EVERY);
}

function drawTimer(id: string, state: TimerState): void {
  for (const card of document.querySelectorAll<HTMLElement>('[data-timer]')) {
    if (card.dataset['timer'] !== id) continue;
    card.dataset['phase'] = state.phase;
    setText(card.querySelector('.count'), `${stopwatchText(state.seconds)} ${timerText(state)}`);
    setText(card.querySelector('.say'), state.text);
  }
}

interface Shown {
  readonly timer: RunningTimer;
  readonly state: TimerState;
}

function drawStrip(states: readonly Shown[], isUnknown: boolean): void {
  const strip = document.getElementById('timers');
  if (strip === null) return;
  const [first] = states.slice().sort(byUrgency);
  strip.hidden = first === undefined && !isUnknown;
  strip.dataset['phase'] = first?.state.phase ?? '';
  const unknown = isUnknown ? 'Timers could not be read: open Timers.' : '';
  // Only the words are read out; seconds would never stop talking.
  const said = first === undefined ? unknown : `${first.timer.order}: ${first.state.text}`;
  setText(strip.querySelector('.say'), said);
  const count =
    first === undefined ? '' : `${stopwatchText(first.state.seconds)} ${timerText(first.state)}`;
  setText(strip.querySelector('.count'), count);
}

function byUrgency(one: Shown, other: Shown): number {
  const phases = URGENCY.indexOf(one.state.phase) - URGENCY.indexOf(other.state.phase);
  return phases === 0 ? one.state.seconds - other.state.seconds : phases;
}

function setText(place: Element | null, text: string): void {
  if (place !== null && place.textContent !== text) place.textContent = text;
}
