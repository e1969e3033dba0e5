import { inBrackets } from '../../words/bandText.ts';
import { countText, durationText, listText, temperatureText } from '../../words/quantityText.ts';
import { temperatureBandText, timeBandText } from '../../words/timeBandText.ts';
import type { HeatUp } from './heatUp.ts';

export const HEAT_UP_TITLE = 'How the mold heats up';

/** The heat-up picture in words, from the same numbers. */
export function heatUpText(heatUp: HeatUp): string {
  return [courseText(heatUp), readingText(heatUp)].filter((words) => words !== '').join(' ');
}

function courseText({ target, course, because, system }: HeatUp): string {
  if (target === undefined) {
    const last = course[course.length - 1];
    const end =
      last === undefined
        ? ''
        : ` After ${durationText(last.seconds)} it reads ${temperatureText(last.top, system)}.`;
    return `The mold top does not get hot enough${because === undefined ? '' : `: ${because}`}.${end}`;
  }
  const hot = inBrackets(timeBandText(target.band));
  const settles = inBrackets(temperatureBandText(target.plateauBand, system));
  return (
    `With the plate set to ${temperatureText(target.setting, system)}, the mold top reaches ${temperatureText(target.top, system, 'up')} ` +
    `in ${durationText(target.seconds, 'up')}${hot} from switch-on; it settles at ${temperatureText(target.plateau, system)}${settles}. ` +
    `Water boils at ${temperatureText(target.boilingPoint, system)} here; the first pour is ${durationText(target.firstPour, 'up')} after switch-on.`
  );
}

function readingText({ readings }: HeatUp): string {
  if (readings.length === 0) return '';
  const trials = [...new Set(readings.map(({ trial }) => trial))];
  const named = trials.length > 4 ? countText(trials.length, 'trial') : listText(trials);
  return `Marks: ${countText(readings.length, 'reading')} of ${named}.`;
}
