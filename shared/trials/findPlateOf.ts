import type { MissingCells } from '../book/missingCells.ts';
import { findPlate, type PlateFacts } from '../plan/facts/findPlate.ts';

/** The plate of a name that is listed; undefined with every gap of its row noted. */
export function findPlateOf(gaps: MissingCells, plate: string): PlateFacts | undefined {
  return findPlate(gaps, { row: 0, record: { plate } });
}
