import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFECT_KEYS } from '../../../shared/book/tables/pourLog.ts';
import { CAUSE_RULES, diagnose, heatRecord } from '../../../shared/outcomes/causes/diagnose.ts';
import { OTHER_CHECKS } from '../../../shared/outcomes/causes/otherChecks.ts';
import type { Defect, RunFigures } from '../../../shared/outcomes/causes/runFigures.ts';
import { evenReal } from '../../evenReal.ts';
import { SOURCES } from '../../sources.ts';
import { CLEAN_JOINT, CLEAN_LAYERS, CLEAN_RUN, COLD_JOINT } from './cleanRun.ts';

function run(changes: Partial<RunFigures>): RunFigures {
  return Object.freeze({ ...CLEAN_RUN, ...changes });
}

/** The clean run with its second cup at another temperature. */
function cup(pour: number): Partial<RunFigures> {
  return { layers: CLEAN_LAYERS.map((one, layer) => (layer === 1 ? { ...one, pour } : one)) };
}

interface Case {
  readonly cause: string;
  readonly changes: Partial<RunFigures>;
  readonly defect: Defect;
  readonly because: string;
  readonly cure: string;
  /** A figure just inside the limit, which says nothing */
  readonly inside: Partial<RunFigures>;
}

const CASES: readonly Case[] = [
  {
    cause: 'layer below too cool to bond',
    changes: { joints: [COLD_JOINT] },
    defect: 'peeledLayer',
    because:
      'the back reached the vein at 61 °C surface, 10 °C under the threshold of 71 °C: likely peel',
    cure: 'pour the back within 40 s of the vein',
    inside: { joints: [{ ...CLEAN_JOINT, contactTemperature: 119.1 }] },
  },
  {
    cause: 'next layer poured before the one below was firm',
    changes: { joints: [{ ...CLEAN_JOINT, gap: 12 }] },
    defect: 'unevenLine',
    because: 'the back followed after 12 s, and the vein carries a layer only after 30 s',
    cure: 'wait 30 s after the vein, and pour low and slow',
    inside: { joints: [{ ...CLEAN_JOINT, gap: 17.1 }] },
  },
  {
    cause: 'mold too cool at the first pour',
    changes: { moldTop: 70 },
    defect: 'coldCrack',
    because: 'the mold top read 70 °C at the first pour, 30 °C below what it must read',
    cure: 'wait until the mold top itself reads 100 °C, whatever the dial says',
    inside: { moldTop: 97 },
  },
  {
    cause: 'mold hotter than the plan takes it',
    changes: { moldTop: 125 },
    defect: 'flash',
    because: 'the mold top read 125 °C, 14 °C above where the plate was to bring it',
    cure: 'turn the plate down until the mold top reads 111 °C or less',
    inside: { moldTop: 114 },
  },
  {
    cause: 'layer set before it found its level',
    changes: {
      layers: [{ name: 'vein', planned: 165, open: { kind: 'seconds', seconds: 13.2 } }],
    },
    defect: 'unevenLine',
    because: 'the vein no longer moved after 13 s',
    cure: 'cover the mold, or fill fewer cavities at a time, so that it stays open long enough to level',
    inside: {
      layers: [{ name: 'vein', planned: 165, open: { kind: 'seconds', seconds: 30 } }],
    },
  },
  {
    cause: 'cup too cool when it was poured',
    changes: cup(147),
    defect: 'shortFill',
    because: 'the back was poured at 147 °C, 8 °C below the lowest pour temperature',
    cure: 'bring the cup back to 165 °C once it falls below 155 °C; fill fewer cavities between heatings',
    inside: cup(153),
  },
  {
    cause: 'cup above the hard stop',
    changes: cup(196),
    defect: 'scorch',
    because: 'the back was poured at 196 °C, above the 190 °C that no cup may pass',
    cure: 'throw that cup away; heat in short bursts, stir and read after each, and keep the fan on',
    inside: cup(172),
  },
  {
    cause: 'cup much hotter than planned',
    changes: cup(180),
    defect: 'flash',
    because:
      'the back was poured at 180 °C, 15 °C hotter than planned: it runs thinner and shrinks more',
    cure: 'let the cup come down to 165 °C, stirring, before you pour',
    inside: cup(173),
  },
  {
    cause: 'cup too long at heat',
    changes: { heatShare: 1.3 },
    defect: 'scorch',
    because: 'a cup of this run uses 130 % of its heat budget, leftovers’ earlier heat included',
    cure: 'cook smaller cups fresh for the later rounds, and use no old leftovers for light colors',
    inside: { heatShare: 1 },
  },
  {
    cause: 'more colorant than its material bears',
    changes: {
      overLimit: [
        'Black is 5 % of the back, above its limit of 3 %: dose less, or use a stronger colorant.',
      ],
    },
    defect: 'bleed',
    because: 'Black is 5 % of the back, above its limit of 3 %',
    cure: 'dose less, or use a stronger colorant',
    inside: { overLimit: [] },
  },
];

describe('each cause', () => {
  test('has a case here', () => {
    expect(CASES.map(({ cause }) => cause)).toEqual(CAUSE_RULES.map(({ cause }) => cause));
  });

  test.each(CASES)('$cause: named first, with evidence and cure', (one) => {
    const found = diagnose(run(one.changes), one.defect, 3);
    expect(found.verdict).toBe('explained');
    expect(found.causes[0]).toMatchObject({
      cause: one.cause,
      because: one.because,
      cure: one.cure,
    });
  });

  test.each(CASES)('$cause: not named just inside its limit', ({ inside }) => {
    for (const defect of DEFECT_KEYS)
      expect(diagnose(run(inside), defect, 1)).toMatchObject({
        verdict: 'not by heat',
        causes: [],
      });
  });

  test.each(CASES)('$cause: worth more the further its figure is off', ({ changes, defect }) => {
    const { worth = 0 } = diagnose(run(changes), defect, 1).causes[0] ?? {};
    expect(worth).toBeGreaterThan(0);
    // four spans at most, times a strength of 1 at most
    expect(worth).toBeLessThanOrEqual(4);
  });
});

describe('rules as data', () => {
  test('every rule and every list of checks names a source that is there', () => {
    const named = [...CAUSE_RULES, ...Object.values(OTHER_CHECKS)].map(({ source }) => source);
    for (const source of named) expect(Object.keys(SOURCES)).toContain(source);
  });

  test('strengths lie above 0 and up to 1; every defect has checks that are no heat', () => {
    for (const { makes } of CAUSE_RULES)
      for (const strength of Object.values(makes)) {
        expect(strength).toBeGreaterThan(0);
        expect(strength).toBeLessThanOrEqual(1);
      }
    for (const defect of DEFECT_KEYS) expect(OTHER_CHECKS[defect].look.length).toBeGreaterThan(0);
  });
});

/** Any run with every figure inside its limits. */
const inside = fc
  .record({
    moldTop: fc.double({ min: 97.1, max: 114, noNaN: true }),
    pour: fc.double({ min: 153.1, max: 173, noNaN: true }),
    contact: fc.double({ min: 119.1, max: 140, noNaN: true }),
    gap: fc.double({ min: 30, max: 600, noNaN: true }),
    open: fc.double({ min: 30, max: 400, noNaN: true }),
    heatShare: evenReal(0, 1),
  })
  .map(({ moldTop, pour, contact, gap, open, heatShare }) =>
    run({
      moldTop,
      heatShare,
      layers: CLEAN_LAYERS.map((one) => ({
        ...one,
        pour,
        open: { kind: 'seconds', seconds: open },
      })),
      joints: [{ ...CLEAN_JOINT, contactTemperature: contact, gap }],
    }),
  );

describe('no false alarm', () => {
  test('a run inside all its limits is never blamed on heat, whatever the defect', () => {
    fc.assert(
      fc.property(inside, fc.constantFrom(...DEFECT_KEYS), (clean, defect) => {
        const found = diagnose(clean, defect, 2);
        expect(found.verdict).toBe('not by heat');
        expect(found.causes).toEqual([]);
        expect(found.checks).toEqual(OTHER_CHECKS[defect].look);
      }),
      { numRuns: 200 },
    );
  });

  test('a joint that tore through is not said to have peeled, however cool it was', () => {
    const torn = run({ joints: [{ ...COLD_JOINT, tear: 'tears through' }] });
    expect(diagnose(torn, 'peeledLayer', 1).verdict).toBe('not by heat');
  });

  test('a defect that no heat makes is not explained by a cold mold', () => {
    expect(diagnose(run({ moldTop: 60 }), 'bleed', 1).verdict).toBe('not by heat');
    expect(diagnose(run({ moldTop: 60 }), 'other', 1).verdict).toBe('not by heat');
  });
});

describe('ranking and doubt', () => {
  test('a cold mold and a cold joint: the joint comes first for a peel, the mold for a crack', () => {
    const cold = run({ moldTop: 70, joints: [COLD_JOINT] });
    const order = (defect: Defect) => diagnose(cold, defect, 1).causes.map(({ cause }) => cause);
    expect(order('peeledLayer')).toEqual([
      'layer below too cool to bond',
      'mold too cool at the first pour',
    ]);
    expect(order('coldCrack')).toEqual([
      'mold too cool at the first pour',
      'layer below too cool to bond',
    ]);
  });

  test('the cure names the mold, the time and the cup, each where it would have helped', () => {
    const { layers } = run(cup(152));
    const found = diagnose(
      run({ layers, moldTop: 80, joints: [{ ...COLD_JOINT, contactTemperature: 112 }] }),
      'peeledLayer',
      1,
    );
    expect(found.causes[0]?.cure).toBe(
      'heat the mold until its top reads 100 °C, or pour the back within 40 s of the vein, or have its cup at 165 °C',
    );
  });

  test('a contact just above the threshold is told as open, with the pour as soon as it is firm', () => {
    const joint = { ...CLEAN_JOINT, surface: 75, contactTemperature: 118 };
    const found = diagnose(run({ joints: [joint] }), 'peeledLayer', 1);
    expect(found.causes[0]).toMatchObject({
      because:
        'the back reached the vein at 75 °C surface, only 4 °C above the threshold of 71 °C, which is not known more closely than that',
      cure: 'pour the back as soon as the vein carries it, 30 s after it',
    });
  });

  test('where no wait would have done, the cure is a hotter layer or a cover', () => {
    const never = { ...COLD_JOINT, latest: { kind: 'too late from the start' } } as const;
    expect(diagnose(run({ joints: [never] }), 'peeledLayer', 1).causes[0]?.cure).toBe(
      'pour that layer hotter, or keep the mold covered until then',
    );
  });

  test('a pour that kept the window of the run sheet is not blamed, unless the mold was hotter than that', () => {
    const kept = { ...CLEAN_JOINT, gap: 12, plannedEarliest: 12 };
    expect(diagnose(run({ joints: [kept] }), 'bleed', 1).causes).toEqual([]);
    const hotter = run({ joints: [kept], moldTop: 108 });
    expect(diagnose(hotter, 'bleed', 1).causes[0]?.because).toBe(
      'the back followed after 12 s, and the vein carries a layer only after 30 s',
    );
  });

  test('a layer that is never firm lets the next one run into it', () => {
    const soft = { ...CLEAN_JOINT, earliest: { kind: 'never firm' } } as const;
    expect(diagnose(run({ joints: [soft] }), 'bleed', 1).causes[0]).toMatchObject({
      because: 'the vein was not firm at any moment on so hot a mold, and the back ran into it',
      cure: 'pour in a cooler mold',
    });
  });

  test('in US units the same evidence stands in degrees Fahrenheit', () => {
    const cold = run({ system: 'US', joints: [COLD_JOINT] });
    expect(diagnose(cold, 'peeledLayer', 1).causes[0]?.because).toBe(
      'the back reached the vein at 142 °F surface, 18 °F under the threshold of 160 °F: likely peel',
    );
  });
});

describe('what is not read', () => {
  const { moldTop: _, ...unread } = run({ blanks: ['Mold top'], joints: [] });

  test('a blank reading keeps heat from being cleared, where heat makes the defect', () => {
    expect(diagnose(unread, 'coldCrack', 1).verdict).toBe('unread');
    expect(diagnose(unread, 'other', 1).verdict).toBe('not by heat');
  });

  test('the joints of a two-piece mold are not judged', () => {
    const twoPiece = run({ isTwoPiece: true, joints: [] });
    expect(diagnose(twoPiece, 'peeledLayer', 1).verdict).toBe('unread');
    expect(diagnose(twoPiece, 'scorch', 1).verdict).toBe('not by heat');
    expect(diagnose(run({ isTwoPiece: true, moldTop: 70 }), 'coldCrack', 1).verdict).toBe(
      'explained',
    );
  });

  test('the record is told as far as it goes', () => {
    expect(heatRecord(CLEAN_RUN)).toBe(
      'the mold top read 101 °C; the back met the vein at 126 °C, layers bond from 116 °C',
    );
    expect(heatRecord(run({ joints: [] }))).toBe('the mold top read 101 °C');
    expect(heatRecord(unread)).toBeUndefined();
  });
});
