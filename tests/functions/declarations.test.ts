import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { functionFacts } from '../../scripts/generate/functionFacts.ts';
import { functionsManual } from '../../scripts/generate/functionsManual.ts';
import { ALL_FUNCTIONS } from '../../shared/functions/allFunctions.ts';
import type {
  Example,
  RowFunction,
  SheetFunction,
  SpillFunction,
} from '../../shared/functions/sheetFunctionTypes.ts';
import { UNITS } from '../../shared/units/units.ts';
import type { CellArgument } from '../../src/functions/cellArgument.ts';
import { runFunction } from '../../src/functions/runFunction.ts';
import { SOURCES } from '../sources.ts';

const ROWS: readonly RowFunction[] = ALL_FUNCTIONS.filter((one) => one.kind === 'row');
const EXAMPLES = ROWS.flatMap((declared) =>
  declared.examples.map((example) => ({ declared, name: declared.name, example })),
);

const SPILLS: readonly SpillFunction[] = ALL_FUNCTIONS.filter((one) => one.kind === 'spill');
const SPILLED = SPILLS.flatMap((declared) =>
  declared.examples.map((example) => ({ declared, name: declared.name, example })),
);

/** Names that sheets in use call. */
const ASKED_FOR =
  'PIECES YIELD SHARE BATCH CUPS DOSE CUT DENSITY FLOATS BOIL PREHEAT PLATEAU SETTING OPEN_TIME CONTACT NEXT_BY CUP_TIME HEAT_USED COOL WINDOW HEAT_CURVE LAYER_CURVE HEAT_FIT SET_FIT OVEN_FIT DROP_FIT PRICE MARGIN BREAKS EXCISE'.split(
    ' ',
  );

/** A list of an example as the range it stands for. */
function asColumn(one: string | number | readonly (string | number)[]): CellArgument {
  return typeof one === 'object' ? one.map((cell) => [cell]) : one;
}

function expectShown(shown: unknown, expected: string | number, within: number | undefined): void {
  if (typeof expected === 'number' && within !== undefined)
    expect(shown).toBeNear(expected, { relative: within });
  else expect(shown).toBe(expected);
}

function expectAnswer(answer: unknown, { result, within }: Example): void {
  if (!Array.isArray(result)) {
    expectShown(answer, result as string | number, within); // not an array: one value
    return;
  }
  const row: readonly unknown[] = Array.isArray(answer) ? answer[0] : [];
  expect(row).toHaveLength(result.length);
  for (const [index, expected] of result.entries()) expectShown(row[index], expected, within);
}

describe('examples', () => {
  test.each(EXAMPLES)('$name $example.args answers $example.result', ({ declared, example }) => {
    expectAnswer(runFunction(declared, example.args), example);
  });

  test.each(EXAMPLES)('$name answers the same in a column of three', ({ declared, example }) => {
    const column = example.args.map(
      (cell): CellArgument => (cell === '' ? '' : [[cell], [''], [cell]]),
    );
    const units =
      column.length > Object.keys(declared.params).length
        ? example.args[column.length - 1]
        : undefined;
    if (units !== undefined) column[column.length - 1] = units;
    const answer = runFunction(declared, column) as readonly (readonly unknown[])[]; // ranges in, rows out
    const single = runFunction(declared, example.args);
    const row = Array.isArray(single) ? single[0] : [single];
    expect(answer[0]).toEqual(row);
    expect(answer[1]).toEqual(declared.returns.map(() => ''));
    expect(answer[2]).toEqual(row);
  });

  test.each(SPILLED)('$name $example.args spills $example.result', ({ declared, example }) => {
    const answer = runFunction(declared, example.args.map(asColumn));
    const [headings = [], ...rows] = Array.isArray(answer) ? answer : [];
    expect(rows).toHaveLength(example.result.length);
    example.result.forEach((row, index) => {
      expect(rows[index]).toHaveLength(row.length);
      expect(headings).toHaveLength(row.length);
      row.forEach((expected, column) => {
        expectShown(rows[index]?.[column], expected, example.within);
      });
    });
  });

  test.each([...EXAMPLES, ...SPILLED])(
    '$name names where $example.result is from',
    ({ example }) => {
      const key = /^[A-Z][A-Z0-9-]{2,}/.exec(example.source)?.[0];
      if (key !== undefined) expect(Object.keys(SOURCES)).toContain(key);
      expect(example.source.length).toBeGreaterThan(5);
    },
  );
});

describe('declarations', () => {
  test('every function that was asked for is there, once', () => {
    const names = ALL_FUNCTIONS.map(({ name }) => name);
    for (const name of ASKED_FOR) expect(names).toContain(`POUR_${name}`);
    expect(new Set(names).size).toBe(names.length);
  });

  test.each(ALL_FUNCTIONS.map((declared) => ({ name: declared.name, declared })))(
    '$name is described in full',
    ({ name, declared }) => {
      expect(name).toMatch(/^POUR_[A-Z_]*[A-Z]$/);
      expect(declared.about).toMatch(/\.$/);
      expect(declared.notes).toMatch(/\.$/);
      expect(declared.returns.length).toBeGreaterThan(0);
      for (const parameter of Object.values(declared.params))
        expect(parameter.about).toMatch(/\.$/);
      if (declared.kind !== 'table') expect(declared.examples.length).toBeGreaterThan(0);
    },
  );

  test.each([...ROWS, ...SPILLS].map((declared) => ({ name: declared.name, declared })))(
    '$name: no optional argument before a needed one',
    ({ declared }) => {
      const needed = Object.values(declared.params).map((parameter) =>
        parameter.kind === 'list' ? !parameter.optional : parameter.default === undefined,
      );
      expect(needed.lastIndexOf(true)).toBeLessThan(
        needed.indexOf(false) === -1 ? needed.length : needed.indexOf(false),
      );
    },
  );

  test('every unit has a label or is a plain fraction', () => {
    for (const [name, unit] of Object.entries(UNITS))
      if (name !== 'fraction') expect(unit.label).not.toBe('');
  });

  test('docs/functions.json and docs/functions.md are fresh', () => {
    const facts = functionFacts(ALL_FUNCTIONS);
    expect(readFileSync('docs/functions.json', 'utf8')).toBe(`${JSON.stringify(facts, null, 2)}\n`);
    expect(readFileSync('docs/functions.md', 'utf8')).toBe(functionsManual(facts));
  });
});

/** What the sentence itself says, without the value that the user typed. */
function unquoted(cell: unknown): string {
  return String(cell).replace(/"[^"]*"/g, '');
}

describe('nonsense', () => {
  const nonsense: readonly CellArgument[] = [
    'x',
    -1e9,
    1e12,
    true,
    '#REF!',
    Number.NaN,
    new Date(0),
    '=1+1',
    'Infinity',
    '1e999',
  ];

  function leadIn(declared: SheetFunction): readonly CellArgument[] {
    return declared.kind === 'table' ? [] : (declared.examples[0]?.args ?? []).map(asColumn);
  }

  test.each([...ROWS, ...SPILLS].map((declared) => ({ name: declared.name, declared })))(
    '$name answers every kind of nonsense with a sentence or a number',
    ({ declared }) => {
      Object.keys(declared.params).forEach((_, position) => {
        for (const value of nonsense) {
          const args = [...leadIn(declared)];
          args[position] = value;
          const answer = runFunction(declared, args);
          const cells = Array.isArray(answer) ? answer.flat() : [answer];
          for (const cell of cells) {
            expect(['string', 'number']).toContain(typeof cell);
            expect(unquoted(cell)).not.toMatch(/NaN|undefined|Infinity|\[object|Error|\bat .*:\d+/);
            expect(String(cell)).not.toMatch(/^[=+@]/);
          }
          expect(cells[0]).not.toBe('');
        }
      });
    },
  );
});
