import type { HeatFigures } from '../plan/heat/heatFigures.ts';
import type { Band } from '../plan/uncertainty/heatDetail.ts';
import { UNKNOWNS } from '../plan/uncertainty/unknowns.ts';
import type { UnitSystem } from '../units/measures.ts';
import { sayDuration, sayTemperature } from './say.ts';
import { sayBand } from './sayBand.ts';

/** A band of times, rounded outward: `45 to 80 s`; empty where it is open at both ends or has no width. */
export function sayTimeBand(band: Band | undefined): string {
  return bare(
    sayBand(
      band,
      (low) => sayDuration(low, 'down'),
      (high) => sayDuration(high, 'up'),
    ),
  );
}

/** A band of temperatures, rounded outward: `228 to 244 °F`. */
export function sayTemperatureBand(band: Band | undefined, system: UnitSystem): string {
  return bare(
    sayBand(
      band,
      (low) => sayTemperature(low, system, 'down'),
      (high) => sayTemperature(high, system, 'up'),
    ),
  );
}

/** What widens a band most, and what to do about it. */
export function widestSentence(widest: keyof HeatFigures): string {
  const { words, trial } = UNKNOWNS[widest];
  return `Mostly from ${words}: ${trial}.`;
}

function bare(bracketed: string): string {
  return bracketed.trim().replace(/^\(|\)$/g, '');
}
