import { hoursText } from '../../words/hoursText.ts';
import { type DayFrame, momentText } from '../../words/momentText.ts';
import { countText, listText, shareText } from '../../words/quantityText.ts';
import type { OneMore } from '../planning/oneMore.ts';
import type { DayPlan } from '../planning/planDay.ts';

/** Whether everything fits, in one sentence. */
export function weekFitText({ orders, unplanned }: DayPlan, frame: DayFrame): string {
  const late = orders.filter((order) => order.late > 0);
  const last = Math.max(0, ...orders.map(({ finish }) => finish));
  if (orders.length === 0) return 'Nothing can be planned.';
  if (late.length === 0 && unplanned.length === 0) {
    const all = orders.length === 1 ? 'The order is' : `All ${orders.length} orders are`;
    return `It fits. ${all} packed by ${momentText(last, frame)}.`;
  }
  const parts = [
    ...(late.length === 0 ? [] : [`late: ${listText(late.map(({ order }) => order))}`]),
    ...(unplanned.length === 0
      ? []
      : [`without a place: ${listText(unplanned.map(({ order }) => order))}`]),
  ];
  return `It does not fit; ${parts.join('; ')}.`;
}

/** How far the plan can be from the best there is. */
export function boundTexts({ cost, bound, orders }: DayPlan, frame: DayFrame): readonly string[] {
  if (orders.length === 0) return [];
  const beyond = cost.finish - bound.finish;
  const finish =
    beyond <= 0
      ? 'No plan finishes sooner than this one.'
      : `No plan finishes before ${momentText(bound.finish, frame)}; this one ends ${hoursText(beyond)} later on the clock, nights counted.`;
  if (cost.lateness === 0) return [finish];
  const more = cost.lateness - bound.lateness;
  const lateness =
    more <= 0
      ? `${hoursText(cost.lateness)} late in all; no plan of these orders is less late.`
      : `${hoursText(cost.lateness)} late in all; no plan is less than ${hoursText(bound.lateness)} late.`;
  return [lateness, finish];
}

/** What holds the day up. */
export function bottleneckText({ loads }: DayPlan): string {
  const [first] = loads;
  if (first === undefined || first.load === 0) return 'Nothing is short.';
  const name = first.name === '' ? first.kind : first.name;
  return `${sentenceStart(name)} is the bottleneck: taken for ${shareText(Math.round(first.load * 100) / 100)} of the time that decides when the last order is packed.`;
}

/** What one more of something would change. */
export function oneMoreText({ kind, name, count, lateness, finish, alsoPlanned }: OneMore): string {
  const ending = count === 1 ? 's' : '';
  const gains = [
    ...(alsoPlanned.length === 0 ? [] : [`make${ending} room for ${listText(alsoPlanned)}`]),
    ...(lateness === 0 ? [] : [`save${ending} ${hoursText(lateness)} of being late`]),
    ...(finish === 0 ? [] : [`finish${count === 1 ? 'es' : ''} ${hoursText(finish)} sooner`]),
  ];
  const what = moreOf(kind, name, count);
  return gains.length === 0 ? `${what} save${ending} nothing.` : `${what} ${listText(gains)}.`;
}

function moreOf(kind: OneMore['kind'], name: string, count: number): string {
  if (kind === 'person') return `One more person like ${name}`;
  return count === 1 ? `One more ${kind} ${name}` : `${count} more ${kind}s ${name}`;
}

/** One order of the sequence: when it is packed and what that means for its due date. */
export function orderOutcomeText(
  { finish, due, late }: DayPlan['orders'][number],
  frame: DayFrame,
): string {
  const packed = `packed ${momentText(finish, frame)}`;
  if (due === undefined) return `${packed}, no due date`;
  return late > 0 ? `${packed}, ${hoursText(late)} late` : `${packed}, in time`;
}

/** Orders on each plate in the sequence of their rounds, runs of one order said once. */
export function plateSequences({ bars }: DayPlan): readonly (readonly [string, string])[] {
  const plates = new Map<string, { order: string; rounds: number }[]>();
  for (const { kind, name, order } of bars) {
    if (kind !== 'plate') continue;
    const runs = plates.get(name) ?? [];
    plates.set(name, runs);
    const last = runs[runs.length - 1];
    if (last?.order === order) last.rounds += 1;
    else runs.push({ order, rounds: 1 });
  }
  return [...plates].map(([name, runs]) => [
    name,
    runs.map(({ order, rounds }) => `${order} (${countText(rounds, 'round')})`).join(', '),
  ]);
}

function sentenceStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
