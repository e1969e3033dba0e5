import type { OrderPlan } from '../../shared/plan/planTypes.ts';
import {
  countText,
  durationText,
  gramsText,
  shareText,
  temperatureText,
  volumeText,
} from '../../shared/words/quantityText.ts';
import { timeBandText } from '../../shared/words/timeBandText.ts';
import { card } from '../page/card.ts';
import { facts } from '../page/facts.ts';

function cupBand({ detail }: OrderPlan): string {
  const band = timeBandText(detail?.cupTime);
  return band === '' ? '' : ` (${band})`;
}

/** The run as a whole: plastisol, cooking, pace, cooling, hands-on time. */
export function workCard(plan: OrderPlan): HTMLElement {
  const { system } = plan;
  return card(
    'The whole run',
    facts([
      [
        'Plastisol',
        `${volumeText(plan.plastisolVolume, system)} (${gramsText(plan.plastisolMass)}) in ${countText(plan.cups, 'cup')}`,
      ],
      [
        'Cook each cup',
        `about ${durationText(plan.cookTime)} in ${countText(plan.cookBursts, 'burst')}, to ${temperatureText(plan.cookTemperature, system)}`,
      ],
      [
        'Heat behind a cup',
        `${shareText(plan.heatUsed)} of what it bears, ${countText(plan.heatings, 'heating')}`,
      ],
      ['Never above', temperatureText(plan.hardStop, system, 'down')],
      ['Back to heat below', temperatureText(plan.lowestPour, system, 'up')],
      [
        'A cup pours',
        `${countText(plan.cavitiesPerCup, 'cavity', 'cavities')} in ${durationText(plan.cupTime, 'down')}${cupBand(plan)}`,
      ],
      [
        'Demold below',
        `${temperatureText(plan.demoldTemperature, system)}, after about ${durationText(plan.coolTime)}`,
      ],
      ['Work', durationText(plan.minutesOfWork * 60)],
    ]),
  );
}
