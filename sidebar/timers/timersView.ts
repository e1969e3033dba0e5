import { timerState, timerText } from '../../shared/day/timers/timerState.ts';
import type { RunningTimer } from '../../shared/day/timers/timerTypes.ts';
import { stopwatchText } from '../../shared/words/quantityText.ts';
import { card } from '../page/card.ts';
import { button, el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import type { TimersView } from '../panel/view.ts';
import { workButton } from '../panel/workButton.ts';
import { showPlan } from '../plan/readSelected.ts';
import { openTimers, startTheTimer, stopTheTimer } from './openTimers.ts';
import { canSound, playCue, wakeSound } from './playCue.ts';

/** Timers that run, those of the order on show, and the cautions that no clock lifts. */
export function timersView(view: TimersView, store: Store): HTMLElement {
  const { timers = [] } = store.get();
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Timers'),
    el(
      'p',
      { class: 'warning' },
      'A timer never replaces the probe: read the mold top and the cup. Stay with the heat; face shield and dry gloves on before you lean over it.',
    ),
    ...(timers.length === 0
      ? [el('p', { class: 'empty' }, 'No timer runs.')]
      : timers.map((timer) => timerCard(timer, store))),
    choicesPart(view, store),
    soundCard(),
    workButton({ id: 'readTimers', label: 'Read the timers again' }, store, () =>
      openTimers(store, view.order),
    ),
    workButton({ id: 'plan', label: 'Back to the plan' }, store, showPlan),
  );
}

function timerCard(timer: RunningTimer, store: Store): HTMLElement {
  const { id, order, label } = timer;
  const state = timerState(timer, Date.now());
  const stop = workButton({ id: `stop ${id}`, label: 'Stop' }, store, () =>
    stopTheTimer(store, id),
  );
  stop.setAttribute('aria-label', `Stop: ${order}, ${label}`);
  return el(
    'section',
    { class: 'card timer', 'data-timer': id, 'data-phase': state.phase },
    el('h2', {}, `${order}: ${label}`),
    el('p', { class: 'count' }, `${stopwatchText(state.seconds)} ${timerText(state)}`),
    el('p', { class: 'say' }, state.text),
    stop,
  );
}

function choicesPart({ order, choices }: TimersView, store: Store): HTMLElement {
  if (choices.length === 0)
    return el(
      'p',
      { class: 'small' },
      'To start a timer, read an order first: its plan knows the times.',
    );
  return card(
    `Start for order ${order}`,
    el('p', { class: 'small' }, 'Press at the moment it happens.'),
    ...choices.map(({ key, label }) =>
      workButton({ id: `start ${key}`.replace(/ /g, '-'), label, look: 'main' }, store, () =>
        startTheTimer(store, order, key),
      ),
    ),
  );
}

function soundCard(): HTMLElement {
  const state = el(
    'p',
    { class: 'small' },
    canSound()
      ? 'Sound is on.'
      : 'Sound is off until a button was pressed in this panel: browsers want it so.',
  );
  return card(
    'Sound',
    state,
    button({ id: 'trySound', label: 'Try the sound' }, () => {
      wakeSound();
      // It takes the browser a moment to wake.
      window.setTimeout(() => {
        playCue('go');
        state.textContent = canSound() ? 'Sound is on.' : 'This browser plays no sound here.';
      }, 150);
    }),
  );
}
