import type { RoundCauses } from '../../shared/outcomes/causes/roundCauses.ts';
import type { RunCause } from '../../shared/outcomes/causes/runCauses.ts';
import { NOT_BY_HEAT, unreadText } from '../../shared/outcomes/causes/unreadText.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';
import { list } from '../page/list.ts';

/** What went wrong in a round: likely causes with their evidence and cure, then what heat does not explain. */
export function causeParts(round: RoundCauses): readonly HTMLElement[] {
  if (round.noPlan !== undefined)
    return [
      el('p', {}, `The round cannot be held against a plan: ${sentence(round.noPlan)}`),
      ...unnamedPart(round),
    ];
  const parts = [
    ...round.causes.map(causeCard),
    ...unexplainedPart(round, 'unread', sentence(unreadText(round))),
    ...unexplainedPart(round, 'unexplained', sentence(NOT_BY_HEAT)),
    ...unnamedPart(round),
  ];
  return parts.length === 0
    ? [el('p', { class: 'empty' }, 'Nothing bad is logged in this round.')]
    : [...parts, ...(round.causes.length === 0 ? [] : [caution()])];
}

function causeCard({ cause, because, cure, explains }: RunCause, index: number): HTMLElement {
  return el(
    'section',
    { class: 'card' },
    el('h3', {}, `${index + 1}. ${sentence(cause)}`),
    el('p', {}, sentence(because)),
    el('p', {}, el('strong', {}, 'Next time: '), sentence(cure)),
    el('p', { class: 'small' }, `Explains: ${explains.join(', ')}.`),
  );
}

function unexplainedPart(
  round: RoundCauses,
  kind: 'unread' | 'unexplained',
  words: string,
): readonly HTMLElement[] {
  const defects = round[kind];
  if (defects.length === 0) return [];
  const record =
    round.record === undefined ? [] : [el('p', {}, `The record: ${sentence(round.record)}`)];
  return [
    el(
      'section',
      { class: 'card' },
      el('h3', {}, defects.map(({ defect }) => defect).join(', ')),
      el('p', {}, el('strong', {}, words)),
      ...record,
      ...defects.flatMap(({ defect, checks }) => [
        el('p', {}, `Check for ${defect.replace(/ \(\d+\)$/, '').toLowerCase()}:`),
        list(checks.map(sentence), 'doses'),
      ]),
    ),
  ];
}

function unnamedPart({ unnamed }: RoundCauses): readonly HTMLElement[] {
  if (unnamed === 0) return [];
  return [
    el(
      'p',
      {},
      `${countText(unnamed, 'bad piece')} with no defect named: correct the entry and say what is wrong, and a cause is looked for.`,
    ),
  ];
}

function caution(): HTMLElement {
  return el(
    'p',
    { class: 'warning' },
    el('strong', {}, 'Likely, not proven. '),
    'Change one thing at a time, and heat in small steps: never past the hard stop, fan on, gloves and face shield, no water near the melt. Hot metal does not look hot. The safety data sheet comes first.',
  );
}
