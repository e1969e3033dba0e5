import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFECT_KEYS } from '../../shared/book/tables/pourLog.ts';
import { checkOutcome } from '../../shared/log/checkOutcome.ts';

const US = { system: 'US', layers: 3 } as const;

const GOOD_ENTRY = {
  run: '1042-3',
  who: 'AK',
  moldTop: '214',
  pour1: '327',
  gap12: '2.5',
  poured: '16',
  good: '14',
  coldCrack: '2',
  tearTest: 'tears through',
  pieceWeight: '0.5',
  notes: ' Draft on the plate. ',
};

function messages(
  typed: Readonly<Record<string, string>>,
  context: Parameters<typeof checkOutcome>[1] = US,
) {
  const checked = checkOutcome({ ...GOOD_ENTRY, ...typed }, context);
  return checked.kind === 'ok'
    ? []
    : checked.problems.map(({ field, text }) => `${field}: ${text}`);
}

describe('checkOutcome', () => {
  test('turns what was typed into engine units and counts blank kinds of defect as none', () => {
    const checked = checkOutcome(GOOD_ENTRY, US);
    expect(checked).toEqual({
      kind: 'ok',
      record: {
        run: '1042-3',
        who: 'AK',
        // (214 - 32) / 1.8 and (327 - 32) / 1.8, by hand
        moldTop: expect.toBeNear(101.11111, { relative: 1e-6 }),
        pour1: expect.toBeNear(163.88889, { relative: 1e-6 }),
        gap12: expect.toBeNear(150, { relative: 1e-12 }),
        poured: 16,
        good: 14,
        ...Object.fromEntries(DEFECT_KEYS.map((key) => [key, 0])),
        coldCrack: 2,
        tearTest: 'tears through',
        // half an avoirdupois ounce of 28.349523125 g
        pieceWeight: expect.toBeNear(0.0141747615625, { relative: 1e-12 }),
        notes: 'Draft on the plate.',
      },
    });
  });

  test('reads the same numbers in a metric shop as metric', () => {
    const checked = checkOutcome(
      { ...GOOD_ENTRY, moldTop: '101', pour1: '164', pieceWeight: '14.2' },
      { system: 'metric', layers: 3 },
    );
    expect(checked).toMatchObject({
      record: {
        moldTop: 101,
        pour1: 164,
        pieceWeight: expect.toBeNear(0.0142, { relative: 1e-12 }),
      },
    });
  });

  test('gives every message at once, each with its field', () => {
    expect(
      messages({
        run: '',
        who: ' ',
        moldTop: '900',
        pour1: 'hot',
        poured: '1.5',
        good: '',
        flash: '-1',
        tearTest: 'bent',
        pieceWeight: '0',
      }),
    ).toEqual([
      'run: run must be given, got nothing',
      'who: who must be given, got nothing',
      'moldTop: mold top must be at most 392 °F, got 900 °F',
      'pour1: pour 1 must be a number (°F), got "hot"',
      'poured: poured must be a whole number, got 1.5',
      'good: good must be given, got nothing',
      'flash: flash must be at least 0, got -1',
      'tearTest: tear test must be one of tears through, tears in part, peels clean, not tested, got "bent"',
      'pieceWeight: piece weight must be greater than 0 oz, got 0 oz',
    ]);
  });

  test.each([
    { typed: { good: '17' }, message: 'good: good must be at most poured (16), got 17' },
    {
      typed: { flash: '1' },
      message: 'coldCrack: defects together must be at most poured less good (2), got 3',
    },
    // A metric reading in a US shop, and the other way round.
    { typed: { pour1: '165' }, message: 'pour1: pour 1 must be at least 212 °F, got 165 °F' },
    {
      typed: { pour4: '330' },
      message: 'pour4: pour 4 must be blank, since the pattern has 3 layers, got "330"',
    },
    {
      typed: { gap34: '2' },
      message: 'gap34: gap 3-4 must be blank, since the pattern has 3 layers, got "2"',
    },
  ])('refuses $typed', ({ typed, message }) => {
    expect(messages(typed)).toEqual([message]);
  });

  test('a Fahrenheit reading in a metric shop is caught', () => {
    const typed = { moldTop: '101', pieceWeight: '14' };
    expect(messages({ ...typed, pour1: '330' }, { system: 'metric', layers: 3 })).toEqual([
      'pour1: pour 1 must be at most 230 °C, got 330 °C',
    ]);
  });

  test('any text is kept as text, whatever it looks like', () => {
    fc.assert(
      fc.property(
        fc.string({ minLength: 1 }).filter((text) => text.trim() !== ''),
        (text) => {
          const checked = checkOutcome({ ...GOOD_ENTRY, notes: text }, US);
          expect(checked).toMatchObject({ kind: 'ok', record: { notes: text.trim() } });
        },
      ),
    );
  });

  test('pieces add up in every entry that it lets through', () => {
    const count = fc.integer({ min: 0, max: 20 });
    fc.assert(
      fc.property(count, count, count, count, (poured, good, coldCrack, other) => {
        const typed = {
          poured: String(poured),
          good: String(good),
          coldCrack: String(coldCrack),
          other: String(other),
        };
        const isSound = poured >= 1 && good + coldCrack + other <= poured;
        expect(messages(typed).length === 0).toBe(isSound);
      }),
    );
  });
});
