import { requireNumber } from '../errors/requireNumber.ts';

/**
 * Fillings of the molds for a number of pieces: pieces / (cavities x molds), rounded up.
 * @param facts - whole numbers, >= 1
 * @returns rounds, and the pieces of the last one
 * @throws InputError when one is not a whole number above 0
 */
export function roundsNeeded({
  pieces,
  cavities,
  molds,
}: {
  readonly pieces: number;
  readonly cavities: number;
  readonly molds: number;
}): { readonly rounds: number; readonly last: number } {
  for (const [field, count] of Object.entries({ pieces, cavities, 'molds in use': molds }))
    requireNumber(count, field, { whole: true, atLeast: 1 });
  const perRound = cavities * molds;
  const rounds = Math.ceil(pieces / perRound);
  return { rounds, last: pieces - (rounds - 1) * perRound };
}
