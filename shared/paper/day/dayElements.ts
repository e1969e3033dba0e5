import { weekFitText } from '../../day/checklist/weekFitText.ts';
import { element } from '../../elements/element.ts';
import type { PlainElement } from '../../elements/plainElement.ts';
import { timetableOf } from '../../pictures/timetable/timetableOf.ts';
import { timetablePicture } from '../../pictures/timetable/timetablePicture.ts';
import type { DayDocument } from './dayTypes.ts';
import { limitsList, packedList, platesList } from './packedList.ts';
import { peopleIn, taskTables } from './taskTables.ts';

/** As wide as a sideways page between its margins [px]. */
const PICTURE_WIDTH = 980;

const CAUTIONS =
  'SDS, equipment manuals and local codes come first. No heat without somebody beside it; shield, dry gloves, sleeves on; no water near the melt.';

/** The pour day as it is printed: the timetable on a page of its own, the lists behind it. */
export function dayElements({ shopName, day }: DayDocument): PlainElement {
  const { firstDay, system } = day;
  const now = 'now' in day ? { now: day.now } : {};
  const picture = timetableOf(day.plan, { firstDay, system, ...now });
  const { title } = picture;
  return element('article', 'pour-day', [
    element('section', 'timetable-page', [
      element('h1', '', [shopName === '' ? title : `${shopName}: ${title}`]),
      element('p', '', [weekFitText(day.plan, day)]),
      element('p', 'cautions', [CAUTIONS]),
      element('div', '', [timetablePicture(picture, PICTURE_WIDTH)]),
    ]),
    element('section', 'lists', [
      element('h2', '', ['Packed in this sequence']),
      packedList(day),
      element('h2', '', ['On the plates']),
      platesList(day),
      element('h2', '', ['What limits it']),
      limitsList(day),
      element('h2', '', ['Who does what']),
      ...peopleIn(day).flatMap((person) => taskTables(day, person)),
    ]),
  ]);
}
