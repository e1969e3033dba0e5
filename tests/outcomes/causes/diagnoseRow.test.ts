import { describe, expect, test } from 'vitest';
import type { Book } from '../../../shared/book/book.ts';
import { indexBook } from '../../../shared/book/bookIndex.ts';
import { DEFECT_KEYS } from '../../../shared/book/tables/pourLog.ts';
import type { PourLogRecord } from '../../../shared/book/tables.ts';
import { diagnoseRow } from '../../../shared/outcomes/causes/diagnoseRow.ts';
import { roundCauses } from '../../../shared/outcomes/causes/roundCauses.ts';
import { runCauses } from '../../../shared/outcomes/causes/runCauses.ts';
import { DEMO, logOf, round } from '../demoRound.ts';

function diagnosed(record: PourLogRecord, book: Book = DEMO) {
  const found = diagnoseRow(indexBook(book), record);
  if (found.kind === 'no plan') throw new Error(found.because);
  return found;
}

/** Every kind of defect, one piece each. */
const ALL_BAD = Object.fromEntries(DEFECT_KEYS.map((key) => [key, 1]));

function firstCause(record: PourLogRecord): string | undefined {
  return diagnosed(record).diagnoses[0]?.causes[0]?.cause;
}

describe('constructed rounds, solved anew', () => {
  test.each([
    {
      cause: 'layer below too cool to bond',
      bad: { moldTop: 60, gap12: 240, gap23: 240, peeledLayer: 3 },
    },
    { cause: 'mold too cool at the first pour', bad: { moldTop: 75, coldCrack: 3 } },
    { cause: 'mold hotter than the plan takes it', bad: { moldTop: 128, flash: 1 } },
    {
      cause: 'layer set before it found its level',
      bad: { moldTop: 45, gap12: 20, gap23: 20, unevenLine: 2 },
    },
    {
      cause: 'next layer poured before the one below was firm',
      bad: { gap12: 6, gap23: 90, bleed: 2 },
    },
    { cause: 'cup too cool when it was poured', bad: { pour2: 140, shortFill: 2 } },
    { cause: 'cup above the hard stop', bad: { pour3: 199, scorch: 2 } },
    { cause: 'cup much hotter than planned', bad: { pour3: 184, flash: 2 } },
  ])('$cause', ({ cause, bad }) => {
    const causes = diagnosed(round(bad)).diagnoses[0]?.causes.map((one) => one.cause);
    expect(causes).toContain(cause);
  });

  test('the evidence is the run’s own: surface at contact, threshold, and the wait that would have done', () => {
    const [peeled] = diagnosed(
      round({ moldTop: 60, gap12: 240, gap23: 240, peeledLayer: 3 }),
    ).diagnoses;
    expect(peeled).toMatchObject({ name: 'Peeled layer', count: 3, verdict: 'explained' });
    expect(peeled?.causes[0]?.because).toMatch(
      /^the (line|back) reached the (belly|line) at 1\d\d °F surface, \d+ °F under the threshold of 1\d\d °F: likely peel$/,
    );
    expect(peeled?.causes[0]?.cure).toMatch(
      /^heat the mold until its top reads 213 °F, or pour the (line|back) within \d+ s of the (belly|line)$/,
    );
  });

  test('a dose above its material’s limit explains a bleed', () => {
    const materials = DEMO.materials.map((one) => ({
      ...one,
      record: { ...one.record, maximumLoading: 1e-5 },
    }));
    const { diagnoses } = diagnosed(round({ bleed: 1 }), { ...DEMO, materials });
    expect(diagnoses[0]?.causes.map(({ cause }) => cause)).toContain(
      'more colorant than its material bears',
    );
  });

  test('leftovers that were at heat before explain a scorch, once the budget is spent', () => {
    const short = { ...DEMO, shop: { ...DEMO.shop, heatBudget: 60 } };
    expect(diagnosed(round({ scorch: 1 }), short).diagnoses[0]?.causes[0]?.cause).toBe(
      'cup too long at heat',
    );
    expect(firstCause(round({ scorch: 1 }))).toBeUndefined();
  });
});

describe('no false alarm', () => {
  test('a good round that has every defect is blamed on heat for none of them', () => {
    const verdicts = diagnosed(round({ good: 2, ...ALL_BAD })).diagnoses.map((one) => one.verdict);
    expect(verdicts).toEqual(DEFECT_KEYS.map(() => 'not by heat'));
  });

  test('no round of the invented shop poured at temperature is blamed on heat, each cold one is', () => {
    const index = indexBook(DEMO);
    const open = DEMO.pourLog.filter(({ record }) =>
      ['Round stick 5 in', 'Wedge tail 4.5 in', 'Thin worm 6 in'].includes(record.mold ?? ''),
    );
    const explained = open.filter(({ record }) => {
      const found = diagnoseRow(index, record);
      return found.kind === 'diagnosed' && found.diagnoses.some((one) => one.causes.length > 0);
    });
    const cold = open.filter(({ record }) => (record.moldTop ?? 0) < 95);
    expect(explained.map(({ row }) => row)).toEqual(cold.map(({ row }) => row));
    expect([open.length - cold.length, cold.length]).toEqual([36, 5]);
  });

  test('a round without a bad piece has nothing to explain', () => {
    expect(diagnosed(round({})).diagnoses).toEqual([]);
  });
});

describe('what a row says', () => {
  test('a joint that gave way counts as a peeled layer that no piece was counted for', () => {
    const { diagnoses } = diagnosed(round({ tear12: 'peels clean' }));
    expect(diagnoses.map(({ name, count }) => [name, count])).toEqual([['Peeled layer', 0]]);
  });

  test('a blank mold top is named, and heat is not cleared', () => {
    const { moldTop: _, ...blank } = round({ coldCrack: 1 });
    const found = diagnosed(blank);
    expect(found.blanks).toEqual(['Mold top']);
    expect(found.diagnoses[0]?.verdict).toBe('unread');
  });

  test('bad pieces with no defect named are counted', () => {
    expect(diagnosed(round({ good: 7, coldCrack: 2 })).unnamed).toBe(3);
    expect(diagnosed(round({ good: 11, coldCrack: 1, dimple: 1 })).unnamed).toBe(0);
  });

  test('the joints of a two-piece mold are left out of account', () => {
    const found = diagnosed(
      round({ order: '1004', mold: 'Split minnow 4 in', pattern: 'River stone', peeledLayer: 1 }),
    );
    expect(found.isTwoPiece).toBe(true);
    expect(found.record).toBe('the mold top read 214 °F');
  });

  test('a mold that the book does not hold any more leaves no plan to go by', () => {
    const found = diagnoseRow(indexBook(DEMO), round({ mold: 'Gone' }));
    expect(found).toEqual({
      kind: 'no plan',
      because: 'mold must be listed in Molds, got "Gone"',
    });
  });
});

describe('roundCauses', () => {
  test('tells each cause once, with all defects that it makes, the heaviest first', () => {
    const record = round({ moldTop: 75, good: 3, coldCrack: 6, unevenLine: 2, bleed: 1 });
    const book = logOf(record);
    const found = roundCauses(indexBook(book), { row: 2, record });
    expect(found.causes[0]).toEqual({
      cause: 'mold too cool at the first pour',
      because: 'the mold top read 167 °F at the first pour, 46 °F below what it must read',
      cure: 'wait until the mold top itself reads 213 °F, whatever the dial says',
      explains: ['Cold crack (6)', 'Uneven line (2)'],
    });
    expect(found.unexplained.map(({ defect }) => defect)).toEqual(['Bleed (1)']);
    const causes = found.causes.map(({ cause }) => cause);
    expect(new Set(causes).size).toBe(causes.length);
  });

  test('what explains many pieces comes before what explains one piece better', () => {
    const told = (cause: string, worth: number) => ({ cause, because: '', cure: '', worth });
    const defect = (name: string, count: number, causes: ReturnType<typeof told>[]) =>
      ({ name, count, verdict: 'explained', causes, checks: [] }) as const;
    const found = runCauses([
      defect('Flash', 1, [told('hot cup', 3)]),
      defect('Dimple', 5, [told('hot mold', 1)]),
      defect('Peeled layer', 0, [told('hot cup', 0.5)]),
    ]);
    expect(found.map(({ cause, explains }) => [cause, explains])).toEqual([
      ['hot mold', ['Dimple (5)']],
      ['hot cup', ['Flash (1)', 'Peeled layer']],
    ]);
  });
});
