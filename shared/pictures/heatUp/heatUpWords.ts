import { sayCount, sayDuration, sayList, sayTemperature } from '../../words/say.ts';
import { sayBand } from '../../words/sayBand.ts';
import type { HeatUp } from './heatUp.ts';

/** The heat-up picture in words, from the same numbers. */
export function heatUpWords(heatUp: HeatUp): string {
  return [courseWords(heatUp), readingWords(heatUp)].filter((words) => words !== '').join(' ');
}

function courseWords({ target, course, because, system }: HeatUp): string {
  if (target === undefined) {
    const last = course[course.length - 1];
    const end =
      last === undefined
        ? ''
        : ` After ${sayDuration(last.seconds)} it reads ${sayTemperature(last.top, system)}.`;
    return `The mold top does not get hot enough${because === undefined ? '' : `: ${because}`}.${end}`;
  }
  const hot = sayBand(
    target.band,
    (low) => sayDuration(low, 'down'),
    (high) => sayDuration(high, 'up'),
  );
  const settles = sayBand(
    target.plateauBand,
    (low) => sayTemperature(low, system, 'down'),
    (high) => sayTemperature(high, system, 'up'),
  );
  return (
    `With the plate set to ${sayTemperature(target.setting, system)}, the mold top reaches ${sayTemperature(target.top, system, 'up')} ` +
    `in ${sayDuration(target.seconds, 'up')}${hot} from switch-on; it settles at ${sayTemperature(target.plateau, system)}${settles}. ` +
    `Water boils at ${sayTemperature(target.boilingPoint, system)} here; the first pour is ${sayDuration(target.firstPour, 'up')} after switch-on.`
  );
}

function readingWords({ readings }: HeatUp): string {
  if (readings.length === 0) return '';
  const trials = [...new Set(readings.map(({ trial }) => trial))];
  const named = trials.length > 4 ? sayCount(trials.length, 'trial') : sayList(trials);
  return `Marks: ${sayCount(readings.length, 'reading')} of ${named}.`;
}
