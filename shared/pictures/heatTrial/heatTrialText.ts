import type { HeatTrialPictured } from '../../trials/trialPictureTypes.ts';
import {
  countText,
  durationText,
  quantityText,
  temperatureText,
} from '../../words/quantityText.ts';
import { trialResiduals } from './trialResiduals.ts';

/** The trial picture in words, from the same numbers. */
export function heatTrialText(trial: HeatTrialPictured): string {
  const { title, readings, curve, target, system } = trial;
  const last = curve[curve.length - 1];
  const course =
    last === undefined
      ? ''
      : `The fitted curve reaches ${temperatureText(last.top, system)} after ${durationText(last.seconds)}.`;
  const wanted =
    target === undefined ? '' : `The mold top must read ${temperatureText(target, system, 'up')}.`;
  return [
    `${title}: ${countText(readings.length, 'reading')}.`,
    course,
    residualText(trial),
    wanted,
  ]
    .filter((one) => one !== '')
    .join(' ');
}

function residualText(trial: HeatTrialPictured): string {
  const residuals = trialResiduals(trial).map(({ residual }) => residual);
  if (residuals.length === 0) return '';
  const largest = Math.max(...residuals.map(Math.abs));
  return `Readings lie at most ${quantityText(largest, 'temperatureDifference', trial.system, 1)} off the curve.`;
}
