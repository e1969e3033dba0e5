import { requireNumber } from '../errors/requireNumber.ts';

/** Rounds that are alike, on one plate. */
export interface RunOfRounds {
  /** Whole, >= 1 */
  readonly rounds: number;
  /** Onto the plate until the mold top is hot, spare time included [s] */
  readonly heatUp: number;
  /** First pour to the end of the top-off [s] */
  readonly pouring: number;
  /** Off the plate until the pieces are out [s] */
  readonly cooling: number;
  /** Sets of molds that take turns, each filling the plate; whole, >= 1 */
  readonly sets: number;
}

/**
 * Time from the first mold on the plate to the last piece out of its mold.
 *
 * A round goes onto the plate when the plate is free and its set of molds is empty:
 * start(n) = max(start(n-1) + heat-up + pouring, start(n-sets) + heat-up + pouring + cooling); total = start(last) + all three.
 * Hands, cups and nights are taken as no limit: the plan of a pour day has them.
 *
 * @returns [s]
 * @throws InputError when a time is negative or a count not a whole number above 0
 */
export function runTime({ rounds, heatUp, pouring, cooling, sets }: RunOfRounds): number {
  requireNumber(rounds, 'rounds', { whole: true, atLeast: 1 });
  requireNumber(sets, 'mold sets', { whole: true, atLeast: 1 });
  for (const [field, time] of Object.entries({ 'heat-up': heatUp, pouring, cooling }))
    requireNumber(time, field, { atLeast: 0, unit: 's' });
  const onPlate = heatUp + pouring;
  const starts: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const plate = round === 0 ? 0 : (starts[round - 1] ?? 0) + onPlate;
    const mold = round < sets ? 0 : (starts[round - sets] ?? 0) + onPlate + cooling;
    starts.push(Math.max(plate, mold));
  }
  return (starts[rounds - 1] ?? 0) + onPlate + cooling;
}
