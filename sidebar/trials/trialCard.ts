import { bondPicture } from '../../shared/pictures/bond/bondPicture.ts';
import { heatTrialPicture } from '../../shared/pictures/heatTrial/heatTrialPicture.ts';
import type { Proposal, TrialsFound } from '../../shared/trials/proposal.ts';
import {
  fittedText,
  heatLossText,
  presentText,
  proposalTitle,
  proposalValue,
  trialEvidenceText,
  verdictTexts,
} from '../../shared/trials/proposalTitle.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { card } from '../page/card.ts';
import { drawElements } from '../page/drawElements.ts';
import { el } from '../page/el.ts';
import { facts } from '../page/facts.ts';
import type { Store } from '../panel/store.ts';
import { workButton } from '../panel/workButton.ts';
import { goBack, useFigure } from './openTrials.ts';

/** Drawn at the least size that its words are made for; the page scales it to its width. */
const PICTURE = { width: 320, height: 420 } as const;

/** One figure: what is in use, what the trials give, what to make of them, and the two ways to go. */
export function trialCard(
  proposal: Proposal,
  index: number,
  { system }: TrialsFound,
  store: Store,
): HTMLElement {
  const fitted = fittedText(proposal, system);
  const loss = heatLossText(proposal, system);
  return card(
    proposalTitle(proposal),
    facts([
      ['In use', presentText(proposal, system)],
      ...(fitted ? [['Trials give', fitted] as const] : []),
      ...(loss ? [['Heat loss', loss] as const] : []),
    ]),
    ...verdictTexts(proposal, system).map((words) => el('p', {}, sentence(words))),
    ...proposal.pictures.map(pictureOf),
    ...(proposal.trials.length === 0
      ? []
      : [el('p', { class: 'small' }, `From ${trialEvidenceText(proposal)}.`)]),
    ...buttonsOf(proposal, index, store, system),
  );
}

function pictureOf(picture: Proposal['pictures'][number]): HTMLElement {
  const drawn = drawElements(
    picture.kind === 'bond' ? bondPicture(picture, PICTURE) : heatTrialPicture(picture, PICTURE),
  );
  return el('figure', {}, el('figcaption', { class: 'small' }, picture.title), drawn);
}

function buttonsOf(
  proposal: Proposal,
  index: number,
  store: Store,
  system: UnitSystem,
): readonly HTMLElement[] {
  const { result, isInUse, back: older } = proposal;
  const title = proposalTitle(proposal);
  const parts: HTMLElement[] = [];
  if (isInUse) parts.push(el('p', { class: 'small' }, 'The measured figure is in use.'));
  else if (result.kind === 'fitted') {
    const looks = { id: `use${index}`, label: 'Use this figure', look: 'main' } as const;
    const use = workButton(looks, store, () => useFigure(store, proposal));
    parts.push(named(use, title));
  }
  if (older?.kind === 'changed by hand')
    parts.push(
      el('p', { class: 'small' }, 'Changed by hand since it was put in use: it stays as it is.'),
    );
  if (older?.kind === 'ready') {
    const before =
      older.before === undefined
        ? 'the usual figure'
        : proposalValue(proposal, older.before, system);
    const looks = { id: `back${index}`, label: `Go back to ${before}` };
    const back = workButton(looks, store, () => goBack(store, proposal));
    parts.push(named(back, title));
  }
  return parts;
}

/** Buttons of several cards read alike: their names for the ear say which card they are of. */
function named(made: HTMLButtonElement, title: string): HTMLButtonElement {
  made.setAttribute('aria-label', `${made.textContent}, ${title}`);
  return made;
}
