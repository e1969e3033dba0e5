import type { HeatPictures } from '../../shared/commands/commandTypes.ts';
import { READING_ADVICE } from '../../shared/paper/runSheet/sections/plateSection.ts';
import { drawPicture } from '../../shared/pictures/drawPicture.ts';
import { pictureText, pictureTitle } from '../../shared/pictures/pictureText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { drawToWidth } from '../page/drawToWidth.ts';
import { el } from '../page/el.ts';
import { openDialog } from './openDialog.ts';

openDialog('heatPicturesFor', (answer) => {
  const place = document.getElementById('heat');
  if (place === null) return;
  place.replaceChildren(...partsOf(answer));
  drawToWidth(answer.pictures, place, drawPicture);
});

function partsOf({ heading, pictures, warnings, cautions }: HeatPictures): readonly HTMLElement[] {
  return [
    el('h1', {}, heading),
    ...listOf('Check', 'warnings', warnings),
    ...pictures.map((picture) =>
      el(
        'section',
        {},
        el('h2', {}, pictureTitle(picture)),
        el('div', { class: 'drawing' }),
        el('p', {}, pictureText(picture)),
      ),
    ),
    el('section', {}, el('h2', {}, 'Reading the mold'), el('p', {}, READING_ADVICE)),
    ...listOf('Cautions', 'cautions', cautions),
  ];
}

function listOf(heading: string, name: string, texts: readonly string[]): readonly HTMLElement[] {
  if (texts.length === 0) return [];
  const items = texts.map((text) => el('li', {}, sentence(text)));
  return [el('section', { class: name }, el('h2', {}, heading), el('ul', {}, ...items))];
}
