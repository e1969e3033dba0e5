import { findPlate, type PlateFacts } from '../runSheet/findPlate.ts';
import type { Gaps } from '../runSheet/gaps.ts';

/** The plate of a name that is listed; undefined with every gap of its row noted. */
export function findPlateOf(gaps: Gaps, plate: string): PlateFacts | undefined {
  return findPlate(gaps, { row: 0, record: { plate } });
}
