import type { TrialsFound } from '../../shared/trials/proposal.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { missingItem } from '../panel/mendPart.ts';
import type { Store } from '../panel/store.ts';
import type { ViewOf } from '../panel/view.ts';
import { whoField } from '../panel/whoField.ts';
import { workButton } from '../panel/workButton.ts';
import { returnToPlan } from '../plan/readSelected.ts';
import { openTrials } from './openTrials.ts';
import { trialCard } from './trialCard.ts';

/** What the shop's own trials say beside the figures in use. */
export function trialsView({ trials }: ViewOf<'trials'>, store: Store): HTMLElement {
  const { proposals, problems } = trials;
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Trials'),
    proposals.length === 0 ? firstTrial() : whoField('Your initials, for the journal', store),
    ...leftOutPart(problems),
    ...proposals.map((proposal, index) => trialCard(proposal, index, trials, store)),
    el(
      'div',
      { class: 'actions' },
      workButton({ id: 'readTrials', label: 'Read the trials again' }, store, openTrials),
      workButton({ id: 'plan', label: 'Back to the plan' }, store, returnToPlan),
    ),
  );
}

/** How a first trial is made, with the caution that belongs to it. */
function firstTrial(): HTMLElement {
  const steps = [
    'Stand a mold on the cold plate, note the room temperature, set the dial and switch on.',
    'After 5, 10, 15, 20, 30 and 45 minutes read the top of the half that forms the casting: with a surface probe, or with an infrared thermometer aimed at tape or matt paint on it. Bare metal reads far too low.',
    'Write each reading into one row of Heat trials, then read the trials here.',
  ];
  return card(
    'No trial to go by yet',
    el(
      'p',
      {},
      'Until there is one, the plan takes usual figures. A first trial of a plate takes three quarters of an hour:',
    ),
    el('ol', {}, ...steps.map((step) => el('li', {}, step))),
    el(
      'p',
      { class: 'warning' },
      el('strong', {}, 'Hot metal burns and does not look hot. '),
      'Wear dry gloves, keep water away, stay with the plate until it is cold again; its manual comes first.',
    ),
    el(
      'p',
      { class: 'small' },
      'When a layer sets, what a microwave gives and how big a drop is go into Bench trials; the notes on its headings say what each needs.',
    ),
  );
}

function leftOutPart(problems: TrialsFound['problems']): readonly HTMLElement[] {
  if (problems.length === 0) return [];
  return [
    el(
      'section',
      {},
      el('h2', {}, 'Left out'),
      el('ul', { class: 'warnings' }, ...problems.map(missingItem)),
    ),
  ];
}
