import type { HeatFigures } from '../heat/heatFigures.ts';
import { UNKNOWNS } from './unknowns.ts';

/** What widens a band most, and what to do about it. */
export function widestText(widest: keyof HeatFigures): string {
  const { words, trial } = UNKNOWNS[widest];
  return `Mostly from ${words}: ${trial}.`;
}
