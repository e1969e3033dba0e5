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
