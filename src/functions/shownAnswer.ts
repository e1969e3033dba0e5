import type { Answer } from '../../shared/functions/defineFunction.ts';
import { MEASURES, type MeasureName, type UnitSystem } from '../../shared/units/measures.ts';
import { fromEngine } from '../../shared/units/toEngine.ts';

export type Shown = string | number;

/** An answer as its cell shows it: in the system's unit, blank where there is none, never a number that is not one. */
export function shownAnswer(
  answer: Answer | undefined,
  measure: MeasureName | undefined,
  system: UnitSystem,
): Shown {
  if (typeof answer !== 'number') return answer ?? '';
  if (!Number.isFinite(answer)) return 'no number answers this: check the inputs';
  return measure ? fromEngine(answer, MEASURES[measure][system]) : answer;
}
