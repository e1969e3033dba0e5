import { describe, expect, test } from 'vitest';
import { defectPareto } from '../../../shared/outcomes/quality/defectPareto.ts';
import { roundsOf } from '../rounds.ts';

describe('defectPareto', () => {
  test('kinds by count over all rounds, Other and Not named last; shares add to all', () => {
    const rounds = roundsOf(
      { good: 0, defects: { dimple: 2, other: 6 } },
      { good: 2, defects: { dimple: 1, flash: 4 } },
    );
    // of 18 bad pieces 2 of the first round and 3 of the second have no name
    const near = (value: number) => expect.toBeNear(value, { relative: 1e-12 });
    expect(defectPareto(rounds, 'What was wrong')).toEqual({
      kind: 'defect-pareto',
      title: 'What was wrong',
      bars: [
        { name: 'Flash', count: 4, share: near(4 / 18), cumulated: near(4 / 18) },
        { name: 'Dimple', count: 3, share: near(3 / 18), cumulated: near(7 / 18) },
        { name: 'Other', count: 6, share: near(6 / 18), cumulated: near(13 / 18) },
        { name: 'Not named', count: 5, share: near(5 / 18), cumulated: 1 },
      ],
    });
  });

  test('a piece named twice in one round takes no name from a bad piece of another', () => {
    const rounds = roundsOf({ good: 9, defects: { dimple: 1, flash: 1 } }, { good: 9 });
    const bars = defectPareto(rounds, '')?.bars.map(({ name, count }) => [name, count]);
    expect(bars).toEqual([
      ['Dimple', 1],
      ['Flash', 1],
      ['Not named', 1],
    ]);
  });

  test('without a round or a bad piece there is none', () => {
    expect(defectPareto([], '')).toBeUndefined();
    expect(defectPareto(roundsOf({}), '')).toBeUndefined();
  });
});
