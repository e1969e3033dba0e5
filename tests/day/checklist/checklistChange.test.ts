import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checklistChange,
  type PresentLine,
} from '../../../shared/day/checklist/checklistChange.ts';
import type { ChecklistRow } from '../../../shared/day/checklist/checklistRow.ts';

const row = (id: string): ChecklistRow => ({ id, order: '', from: 0, person: '', text: id });
const line = (id: string, isTicked = false, isOver = false): PresentLine => ({
  id,
  isTicked,
  isOver,
});

/** The sheet after the change, as its writer makes it. */
function written(present: readonly PresentLine[], wanted: readonly ChecklistRow[]) {
  const { inPlace, removed, added } = checklistChange(present, wanted);
  const lines = [...present];
  for (const at of removed) lines.splice(at, 1);
  expect(inPlace).toHaveLength(lines.length);
  return [
    ...lines.map(({ id, isTicked }, place) => ({ id: inPlace[place]?.id ?? id, isTicked })),
    ...added.map(({ id }) => ({ id, isTicked: false })),
  ];
}

describe('checklistChange', () => {
  test('lines stay where they are, new ones come behind, those not planned go', () => {
    expect(written([line('b', true), line('x'), line('a')], ['a', 'b', 'c'].map(row))).toEqual([
      { id: 'b', isTicked: true },
      { id: 'a', isTicked: false },
      { id: 'c', isTicked: false },
    ]);
  });

  test('a tick of what is no longer planned stays until its day is over', () => {
    expect(written([line('x', true)], [])).toEqual([{ id: 'x', isTicked: true }]);
    expect(written([line('x', true, true)], [])).toEqual([]);
  });

  test('whatever stands on the sheet: every planned line is there once more than its ticked copies, no tick of today is lost', () => {
    const names: fc.Arbitrary<string> = fc.constantFrom('a', 'b', 'c', 'd', '');
    const lines = fc.array(
      fc.record({ id: names, isTicked: fc.boolean(), isOver: fc.constant(false) }),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(lines, fc.uniqueArray(names, { maxLength: 5 }), (present, ids) => {
        const result = written(present, ids.map(row));
        const ticks = (all: readonly { id: string; isTicked: boolean }[]) =>
          all
            .filter(({ isTicked }) => isTicked)
            .map(({ id }) => id)
            .sort();
        expect(ticks(result)).toEqual(ticks(present));
        for (const id of ids) expect(result.some((one) => one.id === id)).toBe(true);
        const blank = result.filter(({ isTicked }) => !isTicked).map(({ id }) => id);
        expect(blank.filter((id) => !ids.includes(id))).toEqual([]);
        expect(new Set(blank).size).toBe(blank.length);
      }),
      { numRuns: 200 },
    );
  });
});
