import { heatUpLine, READING_ADVICE } from '../../shared/paper/runSheet/sections/plateSection.ts';
import type { OrderPlan } from '../../shared/plan/planTypes.ts';
import { plateOnText } from '../../shared/plan/plateOnText.ts';
import { temperatureText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { facts } from '../page/facts.ts';

/** Dial, clock and the reading that starts the run, with the advice that goes with them. */
export function plateCard(plan: OrderPlan): HTMLElement {
  const { plate, system } = plan;
  if (plate.kind === 'unreachable')
    return card(
      'Plate',
      el('p', {}, el('strong', {}, 'The mold will not get hot enough: '), sentence(plate.because)),
    );
  return card(
    `Plate: ${plate.plate}`,
    facts([
      ['Set to', temperatureText(plate.setting, system)],
      ['Switch on at', plateOnText(plan, plate)],
      ['Mold top must read', temperatureText(plate.topTarget, system, 'up')],
      ['Water boils here at', temperatureText(plate.boilingPoint, system)],
    ]),
    el('p', {}, 'A dial at its mark is not yet a hot mold.'),
    el('p', { class: 'small' }, heatUpLine(plan, plate)),
    el('p', { class: 'small' }, READING_ADVICE),
  );
}
