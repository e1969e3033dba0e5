import type { OrderPlan } from '../../shared/plan/plan.ts';
import {
  sayCount,
  sayDuration,
  sayGrams,
  sayShare,
  sayTemperature,
  sayVolume,
} from '../../shared/words/say.ts';
import { sayTimeBand } from '../../shared/words/sayCertainty.ts';
import { el } from '../page/el.ts';
import { facts } from '../page/facts.ts';

function cupBand({ detail }: OrderPlan): string {
  const band = sayTimeBand(detail?.cupTime);
  return band === '' ? '' : ` (${band})`;
}

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
        `about ${sayDuration(plan.cookTime)} in ${sayCount(plan.cookBursts, 'burst')}, to ${sayTemperature(plan.cookTemperature, system)}`,
      ],
      [
        'Heat behind a cup',
        `${sayShare(plan.heatUsed)} of what it bears, ${sayCount(plan.heatings, 'heating')}`,
      ],
      ['Never above', sayTemperature(plan.hardStop, system, 'down')],
      ['Back to heat below', sayTemperature(plan.lowestPour, system, 'up')],
      [
        'A cup pours',
        `${sayCount(plan.cavitiesPerCup, 'cavity', 'cavities')} in ${sayDuration(plan.cupTime, 'down')}${cupBand(plan)}`,
      ],
      [
        'Demold below',
        `${sayTemperature(plan.demoldTemperature, system)}, after about ${sayDuration(plan.coolTime)}`,
      ],
      ['Work', sayDuration(plan.minutesOfWork * 60)],
    ]),
  );
}
