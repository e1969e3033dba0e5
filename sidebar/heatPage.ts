import { drawPicture } from '../shared/pictures/drawPicture.ts';
import type { Picture } from '../shared/pictures/pictures.ts';
import { pictureTitle, pictureWords } from '../shared/pictures/pictureWords.ts';
import { READING_ADVICE } from '../shared/runSheet/sections/plateSection.ts';
import type { HeatPictures } from '../shared/verbs/verbs.ts';
import { drawElements } from './drawElements.ts';
import { openDialog } from './page/dialog.ts';
import { el } from './page/el.ts';
import { sentence } from './page/sentence.ts';

/** As wide as a picture is drawn [px]; between them it follows the dialog. On paper the wider one fits a page. */
const NARROWEST = 300;
const WIDEST = 700;

openDialog('heatPicturesFor', (answer) => {
  const place = document.getElementById('heat');
  if (place === null) return;
  place.replaceChildren(...partsOf(answer));
  const figures = [...place.querySelectorAll<HTMLElement>('.drawing')];
  const draw = () => drawAll(answer.pictures, figures);
  draw();
  window.addEventListener('resize', draw);
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
        el('p', {}, pictureWords(picture)),
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

/** Drawn anew at every width, so that its letters keep their size. */
function drawAll(pictures: readonly Picture[], places: readonly HTMLElement[]): void {
  pictures.forEach((picture, index) => {
    const place = places[index];
    if (place === undefined) return;
    const width = Math.min(Math.max(place.clientWidth, NARROWEST), WIDEST);
    place.replaceChildren(drawElements(drawPicture(picture, width)));
  });
}
