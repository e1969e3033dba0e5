import {
  bottleneckText,
  boundTexts,
  oneMoreText,
  orderOutcomeText,
  plateSequences,
} from '../../day/checklist/weekFitText.ts';
import { element, textList } from '../../elements/element.ts';
import type { PlainElement } from '../../elements/plainElement.ts';
import type { DayShown } from './dayTypes.ts';

/** The orders as they are packed. */
export function packedList(day: DayShown): PlainElement {
  const orders = day.plan.orders.slice().sort((one, other) => one.finish - other.finish);
  return element(
    'ol',
    'sequence',
    orders.map((order) =>
      element('li', '', [
        element('strong', '', [`Order ${order.order}: `]),
        `${orderOutcomeText(order, day)}.`,
      ]),
    ),
  );
}

/** What stands on which plate, one after the other. */
export function platesList({ plan }: DayShown): PlainElement {
  return element(
    'dl',
    'facts',
    plateSequences(plan).flatMap(([plate, orders]) => [
      element('dt', '', [plate]),
      element('dd', '', [orders]),
    ]),
  );
}

/** How good the plan is, what is short, and what more of it would be worth. */
export function limitsList(day: DayShown): PlainElement {
  const { plan, assumptions } = day;
  const saves = 'saves' in day ? day.saves.map(oneMoreText) : [];
  return textList('', [...boundTexts(plan, day), bottleneckText(plan), ...saves, ...assumptions]);
}
