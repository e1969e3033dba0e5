import type { AnswerBand } from '../uncertainty/band.ts';
import type { UnitSystem } from '../units/measures.ts';
import { sayDuration, sayTemperature } from './say.ts';
import { sayBand } from './sayBand.ts';

/** A band of times, rounded outward: `45 to 80 s`; empty where it is open at both ends or has no width. */
export function sayTimeBand(band: AnswerBand | undefined): string {
  return bare(
    sayBand(
      band,
      (low) => sayDuration(low, 'down'),
      (high) => sayDuration(high, 'up'),
    ),
  );
}

/** A band of temperatures, rounded outward: `228 to 244 °F`. */
export function sayTemperatureBand(band: AnswerBand | undefined, system: UnitSystem): string {
  return bare(
    sayBand(
      band,
      (low) => sayTemperature(low, system, 'down'),
      (high) => sayTemperature(high, system, 'up'),
    ),
  );
}

function bare(bracketed: string): string {
  return bracketed.trim().replace(/^\(|\)$/g, '');
}
