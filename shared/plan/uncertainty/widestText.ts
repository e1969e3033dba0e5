import type { HeatFigures } from '../heat/heatFigures.ts';
import { UNCERTAIN_FIGURES } from './uncertainFigures.ts';

/** What widens a band most, and what to do about it. */
export function widestText(widest: keyof HeatFigures): string {
  const { words, trial } = UNCERTAIN_FIGURES[widest];
  return `Mostly from ${words}: ${trial}.`;
}
