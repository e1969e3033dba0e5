import { expect, test } from 'vitest';
import { savingText } from '../../../shared/day/checklist/savingText.ts';
import type { SavingChange } from '../../../shared/day/shop/savingChanges.ts';

const CASES: readonly (readonly [SavingChange['change'], string])[] = [
  [
    { kind: 'first', later: [] },
    'Order 2101 is in time if it goes first; no other order is late by that.',
  ],
  [
    { kind: 'first', later: ['2102', '2103'] },
    'Order 2101 is in time if it goes first, but then 2102 and 2103 are later.',
  ],
  [
    { kind: 'longer', by: 1800 },
    'Order 2101 is in time if everybody works 30 min longer every day.',
  ],
  [
    { kind: 'one more', of: 'mold', name: 'Grub', count: 2 },
    'Order 2101 is in time with 2 more molds Grub, bought or borrowed.',
  ],
  [
    { kind: 'one more', of: 'plate', name: 'Griddle', count: 1 },
    'Order 2101 is in time with one more plate Griddle, bought or borrowed.',
  ],
  [
    { kind: 'one more', of: 'person', name: 'Ben', count: 1 },
    'Order 2101 is in time with one more person like Ben.',
  ],
  [
    { kind: 'due', on: '2026-12-04' },
    'Nothing small saves order 2101: ask the customer for 2026-12-04.',
  ],
];

test.each(CASES)('%j is said in one sentence', (change, text) => {
  expect(savingText({ order: '2101', change })).toBe(text);
});
