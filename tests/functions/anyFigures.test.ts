import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Bounds } from '../../shared/errors/requireNumber.ts';
import { ALL_FUNCTIONS } from '../../shared/functions/allFunctions.ts';
import { MEASURES, type MeasureName } from '../../shared/units/measures.ts';
import { fromEngine } from '../../shared/units/toEngine.ts';
import type { CellArgument } from '../../src/functions/cellArgument.ts';
import { runFunction } from '../../src/functions/runFunction.ts';
import { evenReal } from '../evenReal.ts';

const HEAT = 'POUR_PREHEAT POUR_PLATEAU POUR_SETTING POUR_COOL POUR_OVEN_FIT POUR_DROP_FIT'.split(
  ' ',
);
// A fit of readings that no mold ever gave may search for ten seconds and more: fits.test.ts has those that are like trials.
const SLOW = 'POUR_HEAT_FIT';
const NEW = ALL_FUNCTIONS.filter(
  ({ kind, name }) => (kind === 'spill' && name !== SLOW) || HEAT.includes(name),
);

type Parameter = (typeof NEW)[number]['params'][string];

/** A number that the bounds let through, small and large alike. */
function figure(bounds: Bounds, measure: MeasureName | undefined): fc.Arbitrary<number> {
  const { greaterThan = -1e3, atLeast = greaterThan, atMost = 1e4, lessThan = atMost } = bounds;
  const width = lessThan - atLeast;
  return evenReal(-9, 0).map((power) => {
    const value = atLeast + width * 10 ** power;
    const shown = measure ? fromEngine(value, MEASURES[measure].metric) : value;
    return bounds.whole ? Math.ceil(shown) : shown;
  });
}

function argument(parameter: Parameter, count: number): fc.Arbitrary<CellArgument> {
  if (parameter.kind === 'table' || parameter.kind === 'text') return fc.constant('');
  if (parameter.kind === 'choice') return fc.constantFrom(...parameter.choices);
  const one = figure(parameter.bounds, parameter.measure);
  if (parameter.kind === 'number')
    return parameter.default === undefined ? one : fc.oneof(one, fc.constant(''));
  const length = count - (parameter.matches?.less ?? 0);
  const list = fc
    .array(one, { minLength: length, maxLength: length })
    .map((cells): CellArgument => cells.map((cell) => [cell]));
  return parameter.optional ? fc.oneof(list, fc.constant('')) : list;
}

describe('any figures within their bounds', () => {
  test.each(NEW.map((declared) => ({ name: declared.name, declared })))(
    '$name answers with a table, a row or a sentence, and within seconds',
    ({ declared }) => {
      const parameters = Object.values(declared.params);
      const calls = fc
        .integer({ min: 1, max: 4 })
        .chain((count) => fc.tuple(...parameters.map((one) => argument(one, count))));
      fc.assert(
        fc.property(calls, (args) => {
          const start = performance.now();
          const answer = runFunction(declared, [...args, 'metric']);
          expect(performance.now() - start).toBeLessThan(5000); // five for a busy machine
          for (const cell of Array.isArray(answer) ? answer.flat() : [answer]) {
            expect(['string', 'number']).toContain(typeof cell);
            expect(String(cell)).not.toMatch(/NaN|undefined|Infinity|no number answers/);
          }
        }),
        { numRuns: declared.kind === 'spill' ? 12 : 150, interruptAfterTimeLimit: 15_000 },
      );
    },
  );
});
