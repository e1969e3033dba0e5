import type { QualityAnswer } from '../../shared/commands/qualityCommands.ts';
import { askedText } from '../../shared/outcomes/quality/weekTexts.ts';
import { drawQualityPicture } from '../../shared/pictures/drawQualityPicture.ts';
import { qualityPictureText } from '../../shared/pictures/qualityPictureText.ts';
import { drawToWidth } from '../page/drawToWidth.ts';
import { el } from '../page/el.ts';
import { signalsPart, weekPart, weeksPart, worstPart } from '../quality/weekPart.ts';
import { openDialog } from './openDialog.ts';

openDialog('qualityFor', (answer) => {
  const place = document.getElementById('quality');
  if (place === null) return;
  place.replaceChildren(...partsOf(answer));
  drawToWidth(answer.pictures, place, drawQualityPicture);
});

function partsOf(answer: QualityAnswer): readonly HTMLElement[] {
  const { shopName, day, pictures, missing } = answer;
  const name = shopName === '' ? 'Quality' : `Quality: ${shopName}`;
  return [
    el('h1', {}, `${name}, ${day}`),
    el('p', {}, `${askedText(answer)}.`),
    section('This week', weekPart(answer)),
    section('Signals', signalsPart(answer)),
    section('Worst of all', worstPart(answer)),
    section('Week by week', weeksPart(answer)),
    ...pictures.map((picture) =>
      section(picture.title, [
        el('div', { class: 'drawing' }),
        el('p', {}, qualityPictureText(picture)),
      ]),
    ),
    ...missing.map((text) => el('p', {}, text)),
  ];
}

function section(heading: string, parts: readonly HTMLElement[]): HTMLElement {
  return el('section', {}, el('h2', {}, heading), ...parts);
}
