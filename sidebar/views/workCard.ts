import type { OrderPlan } from '../../shared/runSheet/plan.ts';
import {
  sayCount,
  sayDuration,
  sayGrams,
  sayTemperature,
  sayVolume,
} from '../../shared/runSheet/say.ts';
import { el } from '../page/el.ts';
import { facts } from './facts.ts';

/** The run as a whole: plastisol, cooking, pace, cooling, hands-on time. */
export function workCard(plan: OrderPlan): HTMLElement {
  const { system } = plan;
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, 'The whole run'),
    facts([
      [
        'Plastisol',
        `${sayVolume(plan.plastisolVolume, system)} (${sayGrams(plan.plastisolMass)}) in ${sayCount(plan.cups, 'cup')}`,
      ],
      [
        'Cook each cup',
        `about ${sayDuration(plan.cookTime)} in bursts, to ${sayTemperature(plan.cookTemperature, system)}`,
      ],
      ['Never above', sayTemperature(plan.hardStop, system, 'down')],
      ['Back to heat below', sayTemperature(plan.lowestPour, system, 'up')],
      [
        'A cup pours',
        `${sayCount(plan.cavitiesPerCup, 'cavity', 'cavities')} in ${sayDuration(plan.cupTime, 'down')}`,
      ],
      [
        'Demold below',
        `${sayTemperature(plan.demoldTemperature, system)}, after about ${sayDuration(plan.coolTime)}`,
      ],
      ['Work', sayDuration(plan.minutesOfWork * 60)],
    ]),
  );
}
