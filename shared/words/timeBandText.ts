import type { AnswerBand } from '../uncertainty/band.ts';
import type { UnitSystem } from '../units/measures.ts';
import { bandText } from './bandText.ts';
import { durationText, temperatureText } from './quantityText.ts';

/** A band of times, rounded outward: `45 to 80 s`; empty where it is open at both ends or has no width. */
export function timeBandText(band: AnswerBand | undefined): string {
  return bandText(
    band,
    (low) => durationText(low, 'down'),
    (high) => durationText(high, 'up'),
  );
}

/** A band of temperatures, rounded outward: `228 to 244 °F`. */
export function temperatureBandText(band: AnswerBand | undefined, system: UnitSystem): string {
  return bandText(
    band,
    (low) => temperatureText(low, system, 'down'),
    (high) => temperatureText(high, system, 'up'),
  );
}
