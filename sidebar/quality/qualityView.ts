import type {
  QualityPicture,
  QualitySummary,
} from '../../shared/outcomes/quality/qualitySummary.ts';
import { drawQualityPicture } from '../../shared/pictures/drawQualityPicture.ts';
import { qualityPictureText } from '../../shared/pictures/qualityPictureText.ts';
import { card } from '../page/card.ts';
import { drawElements } from '../page/drawElements.ts';
import { el } from '../page/el.ts';
import { inWords } from '../page/folded.ts';
import type { Store } from '../panel/store.ts';
import type { ViewOf } from '../panel/view.ts';
import { workButton } from '../panel/workButton.ts';
import { returnToPlan } from '../plan/readSelected.ts';
import { openQuality, printQuality } from './openQuality.ts';
import { qualityChoice } from './qualityChoice.ts';
import { signalsPart, weekPart, weeksPart, worstPart } from './weekPart.ts';

/** Drawn at the least width that its words are made for; the panel scales it. */
const WIDTH = 300;

/** How the shop's pieces came out: this week, signals, the worst, the weeks, and the charts of what is chosen. */
export function qualityView({ quality }: ViewOf<'quality'>, store: Store): HTMLElement {
  const isEmpty = quality.molds.length === 0;
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Quality'),
    ...(isEmpty ? [emptyText()] : bodyOf(quality, store)),
    el(
      'div',
      { class: 'actions' },
      ...(isEmpty
        ? []
        : [workButton({ id: 'printQuality', label: 'Open to print' }, store, printQuality)]),
      workButton({ id: 'readQuality', label: 'Read the log again' }, store, () =>
        openQuality(store),
      ),
      workButton({ id: 'plan', label: 'Back to the plan' }, store, returnToPlan),
    ),
  );
}

function emptyText(): HTMLElement {
  return el(
    'p',
    { class: 'empty' },
    'No round is logged yet. After a run press Log what came out; a yield shows from the first round on, a control chart needs two.',
  );
}

function bodyOf(quality: QualitySummary, store: Store): readonly HTMLElement[] {
  return [
    qualityChoice(quality, store),
    card('This week', ...weekPart(quality)),
    card('Signals', ...signalsPart(quality)),
    card('Worst of all', ...worstPart(quality)),
    card('Week by week', ...weeksPart(quality)),
    ...quality.pictures.map(pictureCard),
    ...quality.missing.map((text) => el('p', { class: 'empty' }, text)),
  ];
}

function pictureCard(picture: QualityPicture): HTMLElement {
  return card(
    picture.title,
    el('figure', {}, drawElements(drawQualityPicture(picture, WIDTH))),
    inWords(picture.title, qualityPictureText(picture)),
  );
}
