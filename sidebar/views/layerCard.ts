import type { DosePlan, LayerPlan, OrderPlan } from '../../shared/runSheet/plan.ts';
import {
  sayCount,
  sayDuration,
  sayGrams,
  sayShare,
  sayTemperature,
  sayVolume,
} from '../../shared/runSheet/say.ts';
import { el } from '../page/el.ts';
import { sentence } from '../page/sentence.ts';
import { facts } from './facts.ts';

/** One layer: its cups and what goes into each, its mark, and when it may follow the one below. */
export function layerCard(layer: LayerPlan, plan: OrderPlan): HTMLElement {
  const { system } = plan;
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, `Layer ${layer.order}: ${layer.layer}`),
    facts([
      ['Cups', String(layer.cups)],
      ['In each cup', `${sayGrams(layer.cupMass)} (${sayVolume(layer.cupVolume, system)})`],
      ['Fill to', sayShare(layer.fillMark)],
      ['Cup at', sayTemperature(layer.pourTemperature, system)],
      ['Pour it', windowText(layer, plan)],
      ['Sets', openText(layer)],
    ]),
    el('p', { class: 'small' }, layer.lot === '' ? layer.base : `${layer.base}, lot ${layer.lot}`),
    el('ul', { class: 'doses' }, ...layer.doses.map(doseItem)),
  );
}

/** Rounded so that the window never opens wider than it is. */
function windowText({ window }: LayerPlan, plan: OrderPlan): string {
  if (window === undefined)
    return plan.plate.kind === 'reachable' ? 'when the mold top is hot' : 'first';
  switch (window.kind) {
    case 'none':
      return `will not bond: ${window.because}`;
    case 'from':
      return `${sayDuration(window.earliest, 'up')} or more after the layer below`;
    case 'between':
      return `${sayDuration(window.earliest, 'up')} to ${sayDuration(window.latest, 'down')} after the layer below`;
  }
}

function openText({ openTime }: LayerPlan): string {
  return openTime.kind === 'stays open'
    ? 'not while the mold is hot'
    : `in about ${sayDuration(openTime.seconds)}`;
}

function doseItem(dose: DosePlan): HTMLElement {
  const [first] = dose.proposals;
  const advice = first === undefined ? [] : [el('span', { class: 'small' }, ` ${sentence(first)}`)];
  return el('li', {}, `${dose.material}: `, el('strong', {}, doseText(dose)), ...advice);
}

function doseText({ measure, mass }: DosePlan): string {
  switch (measure.kind) {
    case 'drops':
      return sayCount(measure.drops, 'drop');
    case 'powder':
      return `${sayGrams(mass)} (${measure.spoons})`;
    case 'scale':
      return sayGrams(mass);
  }
}
