import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Host } from '../../../workbench/host/Host.ts';
import { openHost } from '../../../workbench/host/openHost.ts';
import { folder, type Opened, openFixture, writeFixture } from './fixture.ts';

const ROWS = 12;
const AREA = 'A1:F20';

/**
 * Formulas that spill, shrink, feed each other, meet and move.
 * They look left of their own column only (L: the column before, A: the inputs), so that none feeds itself.
 */
const FORMULAS = [
  '=SUM(A1:A)',
  '=SEQUENCE(A1)',
  '=FILTER(A1:A6,A1:A6>2)',
  '=ARRAYFORMULA(DOUBLE(A2:A9))',
  '=DOUBLE(L1:L4)',
  '=SUM(L1:L)+SUM(A1:L)',
  '=A2*2+L3',
  '=IF(A3>3,SEQUENCE(3),"small")',
  '=LET(x,A1:A4,SUM(x)-MAX(x))',
  '=COUNT(A1:L12)',
  '=INDEX(L1:L6,2)&"!"',
];

type Edit =
  | { readonly kind: 'type'; readonly cell: string; readonly text: string }
  | { readonly kind: 'run'; readonly code: string };

const row = fc.integer({ min: 1, max: ROWS });
const anyColumn = fc.constantFrom(...'BCDEF');
const anyCell = fc.tuple(anyColumn, row).map((at) => at.join(''));
const inputCell = row.map((at) => `A${at}`);

function typing(at: fc.Arbitrary<string>, text: fc.Arbitrary<string>): fc.Arbitrary<Edit> {
  return fc.record({ kind: fc.constant('type' as const), cell: at, text });
}

function running(code: (row: number) => string): fc.Arbitrary<Edit> {
  return row.map((at) => ({ kind: 'run', code: code(at) }));
}

const placing: fc.Arbitrary<Edit> = fc
  .tuple(anyColumn, row, fc.constantFrom(...FORMULAS))
  .map(([column, at, formula]) => {
    const left = String.fromCharCode(column.charCodeAt(0) - 1);
    const text = formula.replace(/\bL(?=\d|\))/g, left).replace(/:L\b/g, `:${left}`);
    return { kind: 'type', cell: `${column}${at}`, text };
  });

const edit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 5, arbitrary: typing(inputCell, fc.integer({ min: 0, max: 6 }).map(String)) },
  { weight: 4, arbitrary: placing },
  { weight: 2, arbitrary: typing(anyCell, fc.constantFrom('', 'text', '3')) },
  { weight: 1, arbitrary: running((at) => `sheet.insertRowsBefore(${at}, 1)`) },
  { weight: 1, arbitrary: running((at) => `sheet.deleteRows(${at}, 1)`) },
);

async function apply({ host, value }: Opened, step: Edit): Promise<void> {
  if (step.kind === 'run') await value(step.code);
  else host.type('Sheet1', step.cell, step.text);
  await host.settled();
}

/** The same formulas calculated by an engine that saw none of the edits: the file holds no values of theirs. */
async function calculatedAfresh(host: Host, dist: string, book: string): Promise<unknown> {
  await host.save();
  const fresh = await openHost({ dist, book });
  const values = fresh.values('Sheet1', AREA);
  await fresh.close();
  return values;
}

test.each([
  {
    given: 'a spill shrinks under another and under sums',
    steps: 'A1:5 B1:=SEQUENCE(A1) C1:=DOUBLE(B1:B5) D1:=SUM(B1:B)+SUM(C1:C) A1:2 A1:4 A1:1',
  },
  {
    given: 'one filter feeds another',
    steps: 'A1:1 A2:2 A3:3 B1:=FILTER(A1:A3,A1:A3>1) C1:=FILTER(B1:B3,B1:B3>2) A3:0 A3:9 A1:7 A2:0',
  },
  {
    given: 'a filled cell comes and goes in a spill',
    steps: 'A1:3 B1:=SEQUENCE(A1) B3:x B3: B2:y A1:1 B2: A1:3',
  },
  {
    given: 'spills decide the size of spills',
    steps:
      'A1:3 B1:=SEQUENCE(A1) C1:=SEQUENCE(B2) D1:=SEQUENCE(SUM(C1:C)) A1:1 A1:2 B1:5 B1:=SEQUENCE(A1)',
  },
  {
    given: 'two spills want the same cells',
    steps: 'A1:4 B2:=SEQUENCE(A1) B4:=SEQUENCE(2) A1:2 A1:4 B4:',
  },
])('when $given, the values are those of a workbook typed afresh', async ({ steps }) => {
  const edits = steps.split(' ').map((step): readonly [string, string] => {
    const at = step.indexOf(':');
    return [step.slice(0, at), step.slice(at + 1)];
  });
  const edited = await openFixture();
  for (const [cell, text] of edits) {
    edited.host.type('Sheet1', cell, text);
    await edited.host.settled();
  }
  const fresh = await openFixture();
  for (const [cell, text] of new Map(edits)) fresh.host.type('Sheet1', cell, text);
  await fresh.host.settled();
  expect(edited.host.values('Sheet1', AREA)).toEqual(fresh.host.values('Sheet1', AREA));
});

test('after any edits the values are those of a fresh calculation', async () => {
  const dist = writeFixture();
  const steps = fc.array(edit, { minLength: 8, maxLength: 14 });
  await fc.assert(
    fc.asyncProperty(steps, async (edits) => {
      const book = join(folder(), 'fuzz.xlsx');
      const opened = await openFixture({ dist, book });
      for (const step of edits) await apply(opened, step);
      const values = opened.host.values('Sheet1', AREA);
      expect(values).toEqual(await calculatedAfresh(opened.host, dist, book));
    }),
    { seed: 20260504, numRuns: 14, endOnFailure: true },
  );
});

test('a column total is the sum of what was typed, through inserted and deleted rows', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(row, fc.integer({ min: -9, max: 9 })), { maxLength: 8 }),
      async (inputs) => {
        const { host, value } = await openFixture();
        host.type('Sheet1', 'C1', '=SUM(A2:A)');
        const column = new Map<number, number>();
        for (const [at, amount] of inputs) {
          column.set(at + 1, amount);
          host.type('Sheet1', `A${at + 1}`, String(amount));
        }
        await value('sheet.insertRowsBefore(3, 2); sheet.deleteRows(8, 1)');
        // Row 8 after the insertion was row 6 before it.
        column.delete(6);
        const total = [...column.values()].reduce((sum, amount) => sum + amount, 0);
        expect(host.values('Sheet1', 'C1')).toEqual([[total]]);
      },
    ),
    { seed: 7, numRuns: 8, endOnFailure: true },
  );
});
