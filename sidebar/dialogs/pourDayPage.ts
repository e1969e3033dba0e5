import type { DayPage } from '../../shared/commands/checklistCommands.ts';
import { isReplan } from '../../shared/commands/dayCommands.ts';
import { weekFitText } from '../../shared/day/checklist/weekFitText.ts';
import { timetableOf } from '../../shared/pictures/timetable/timetableOf.ts';
import { timetablePicture } from '../../shared/pictures/timetable/timetablePicture.ts';
import {
  frameOf,
  limitsPart,
  peopleIn,
  personPart,
  platesPart,
  sequencePart,
} from '../day/fitPart.ts';
import { drawElements } from '../page/drawElements.ts';
import { el } from '../page/el.ts';
import { openDialog } from './openDialog.ts';

/** As wide as a sideways page between its margins [px]. */
const WIDTH = 980;

openDialog('dayPageFor', (answer) => {
  const place = document.getElementById('day');
  if (place === null) return;
  place.replaceChildren(...partsOf(answer));
  const choice = document.querySelector<HTMLInputElement>('#lists');
  const follow = () => place.classList.toggle('with-lists', choice?.checked === true);
  choice?.addEventListener('change', follow);
  follow();
});

function partsOf({ shopName, day }: DayPage): readonly HTMLElement[] {
  const now = isReplan(day) ? { now: day.now } : {};
  const picture = timetableOf(day.plan, { ...frameOf(day), ...now });
  const title = picture.title;
  return [
    el(
      'section',
      { class: 'timetable-page' },
      el('h1', {}, shopName === '' ? title : `${shopName}: ${title}`),
      el('p', {}, weekFitText(day.plan, frameOf(day))),
      el(
        'p',
        { class: 'cautions' },
        'SDS, equipment manuals and local codes come first. No heat without somebody beside it; shield, dry gloves, sleeves on; no water near the melt.',
      ),
      el('div', {}, drawElements(timetablePicture(picture, WIDTH))),
    ),
    el(
      'section',
      { class: 'lists' },
      el('h2', {}, 'Packed in this sequence'),
      sequencePart(day),
      el('h2', {}, 'On the plates'),
      platesPart(day),
      el('h2', {}, 'What limits it'),
      limitsPart(day),
      el('h2', {}, 'Who does what'),
      ...peopleIn(day).flatMap((person) => personPart(day, person)),
    ),
  ];
}
