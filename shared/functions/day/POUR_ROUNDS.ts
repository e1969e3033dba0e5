import { roundsNeeded } from '../../batch/roundsNeeded.ts';
import { defineFunction } from '../defineFunction.ts';

export const POUR_ROUNDS = defineFunction({
  name: 'POUR_ROUNDS',
  family: 'day',
  about: 'Fillings of the molds for a number of pieces, and the pieces of the last one.',
  params: {
    pieces: {
      kind: 'number',
      about: 'Pieces to pour, the expected bad ones included.',
      bounds: { atLeast: 1, atMost: 1e6, whole: true },
    },
    cavities: {
      kind: 'number',
      about: 'Cavities of one mold.',
      bounds: { atLeast: 1, atMost: 500, whole: true },
    },
    moldsInUse: {
      kind: 'number',
      about: 'Copies of the mold filled in one round.',
      bounds: { atLeast: 1, atMost: 50, whole: true },
      default: 1,
    },
  },
  returns: [
    { name: 'rounds', about: 'Fillings', kind: 'number' },
    { name: 'last round', about: 'Pieces in the last filling', kind: 'number' },
  ],
  examples: [
    { args: [100, 8, 2], result: [7, 4], source: '6 rounds of 16 are 96, 4 are left, by hand' },
    { args: [96, 8, 2], result: [6, 16], source: '6 rounds of 16, by hand' },
  ],
  notes: 'Rounds = pieces / (cavities × molds in use), rounded up.',
  compute: ({ pieces, cavities, moldsInUse }) => {
    const { rounds, last } = roundsNeeded({ pieces, cavities, molds: moldsInUse });
    return [rounds, last];
  },
});
