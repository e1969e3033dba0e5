import { type DayAnswer, isReplan, type ReplanAnswer } from '../../shared/commands/dayCommands.ts';
import { replanTexts } from '../../shared/day/checklist/replanTexts.ts';
import { savingText } from '../../shared/day/checklist/savingText.ts';
import { weekFitText } from '../../shared/day/checklist/weekFitText.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';
import { list } from '../page/list.ts';

type Day = DayAnswer | ReplanAnswer;

/** Whether it fits, what is left out and why, and what saves an order that is late. */
export function fitPart(day: Day): readonly HTMLElement[] {
  const { plan, leftOut, changes } = day;
  const out = [...plan.unplanned, ...leftOut].map(
    ({ order, because }) => `Order ${order} is left out: ${sentence(because)}`,
  );
  const ticked = isReplan(day) ? [...replanTexts(day.plan), ...tickWords(day)] : [];
  return [
    el('p', { class: 'key' }, weekFitText(plan, day)),
    ...(ticked.length === 0 ? [] : [list(ticked)]),
    ...(out.length === 0 ? [] : [list(out)]),
    ...(changes.length === 0 ? [] : [list(changes.map(savingText))]),
  ];
}

function tickWords({ untimed, ahead }: ReplanAnswer): readonly string[] {
  return [
    ...(untimed.length === 0
      ? []
      : [`${countText(untimed.length, 'tick')} without a time, taken as done when planned.`]),
    ...(ahead.length === 0
      ? []
      : [`${countText(ahead.length, 'tick')} with a time still to come, taken as done now.`]),
  ];
}
