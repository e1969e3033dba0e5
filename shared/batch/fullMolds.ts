import { requireNumber } from '../errors/requireNumber.ts';

export interface FullMolds {
  readonly fillings: number;
  /** Pieces that all those fillings make, >= the pieces asked for */
  readonly pieces: number;
}

/**
 * Pieces rounded up to full molds: a mold that is hot and being poured is filled.
 * @param pieces to pour, whole, >= 1
 * @param cavities filled at once, whole, >= 1
 * @throws InputError on a figure out of range
 */
export function fullMolds(pieces: number, cavities: number): FullMolds {
  requireNumber(pieces, 'pieces to pour', { atLeast: 1, whole: true });
  requireNumber(cavities, 'cavities', { atLeast: 1, whole: true });
  const fillings = Math.ceil(pieces / cavities);
  return { fillings, pieces: fillings * cavities };
}
