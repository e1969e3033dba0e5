import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bondTexts, noBondText } from '../../../shared/outcomes/bond/bondTexts.ts';
import { bondFit, type TornJoint } from '../../../shared/quality/bond/bondFit.ts';
import { passChance } from '../../../shared/quality/logistic/logisticLogLikelihood.ts';
import { errorText } from '../../heat/errorText.ts';
import { LAUNCHES } from '../logistic/launches.ts';

function joints(tear: TornJoint['tear'], ...at: readonly number[]): readonly TornJoint[] {
  return at.map((contactTemperature) => Object.freeze({ contactTemperature, tear }));
}

/** Peels up to 117, bonds from 115: they overlap. */
const MIXED = Object.freeze([
  ...joints('peels clean', 105, 108, 110, 112, 114, 117),
  ...joints('tears through', 115, 118, 120, 122, 125, 128),
]);

function fitted(all: readonly TornJoint[]) {
  const fit = bondFit(all);
  if (fit.kind !== 'fitted') throw new Error(fit.kind);
  return fit;
}

describe('bondFit', () => {
  test('SCIPYLOGISTIC: launches turned round, cold is damage, give 64.2302 with 53.828 to 68.614 at 90 %', () => {
    const turned = LAUNCHES.flatMap(({ at, passed, of }) => [
      ...joints('tears through', ...Array<number>(of - passed).fill(at)),
      ...joints('peels clean', ...Array<number>(passed).fill(at)),
    ]);
    const { value, low, high } = fitted(turned).threshold;
    // golden sections to 1e-5 of a logarithm leave the profile's height good to 1e-9
    expect(value).toBeNear(64.2302305, { absolute: 1e-5 });
    expect(low).toBeNear(53.8281005, { absolute: 1e-5 });
    expect(high).toBeNear(68.6139532, { absolute: 1e-5 });
  });

  test('half of the joints bond at the threshold, and it lies between its limits', () => {
    const { curve, threshold } = fitted(MIXED);
    // rounding
    expect(passChance(curve.intercept, curve.slope, threshold.value)).toBeNear(0.5, {
      absolute: 1e-9,
    });
    expect(threshold.low).toBeLessThan(threshold.value);
    expect(threshold.high).toBeGreaterThan(threshold.value);
  });

  test('a tear in part is half a bond: one at the threshold moves it by nothing', () => {
    const { threshold } = fitted(MIXED);
    const more = fitted([...MIXED, ...joints('tears in part', threshold.value)]);
    // Firth's penalty shifts with one more joint, by less than a tenth of a degree
    expect(more.threshold.value).toBeNear(threshold.value, { absolute: 0.1 });
  });

  test('joints that fall apart cleanly keep a finite threshold between them, and it is said', () => {
    const apart = [
      ...joints('peels clean', 106, 108, 111),
      ...joints('tears through', 119, 121, 124),
    ];
    const { threshold, remarks } = fitted(apart);
    expect(threshold.value).toBeGreaterThan(111);
    expect(threshold.value).toBeLessThan(119);
    expect(remarks[0]).toEqual({ kind: 'apart', peeledTo: 111, boundFrom: 119 });
  });

  test('limits wider than the range of the usual figure are said', () => {
    const far = [...joints('peels clean', 95, 98, 100), ...joints('tears through', 125, 128, 130)];
    const { threshold, remarks } = fitted(far);
    const span = threshold.high - threshold.low;
    expect(span).toBeGreaterThan(10);
    expect(remarks[1]).toEqual({ kind: 'wide', span });
  });

  test('turns with the scale: every joint 10 K hotter moves value and limits by 10 K', () => {
    const hotter = MIXED.map((one) => ({
      ...one,
      contactTemperature: one.contactTemperature + 10,
    }));
    const [before, after] = [fitted(MIXED).threshold, fitted(hotter).threshold];
    // golden sections to 1e-5 of a logarithm
    expect(after.value).toBeNear(before.value + 10, { absolute: 1e-6 });
    expect(after.low).toBeNear(before.low + 10, { absolute: 1e-3 });
    expect(after.high).toBeNear(before.high + 10, { absolute: 1e-3 });
  });

  test('any torn joints give a kind of answer, and no number that is none', () => {
    const any = fc.array(
      fc.record({
        contactTemperature: fc.integer({ min: 95, max: 140 }),
        tear: fc.constantFrom('tears through', 'tears in part', 'peels clean'),
      }),
      { maxLength: 25 },
    );
    fc.assert(
      fc.property(any, (all) => {
        const fit = bondFit(all as readonly TornJoint[]); // the three tears were just listed
        expect(JSON.stringify(fit)).not.toMatch(/null|NaN/);
      }),
      { numRuns: 100 },
    );
  });

  test('any joints that mostly hold where they are hot have a threshold between its limits', () => {
    const sorted = fc.array(
      fc.tuple(fc.integer({ min: 108, max: 124 }), fc.integer({ min: 0, max: 99 })).map(
        ([contactTemperature, luck]): TornJoint => ({
          contactTemperature,
          tear: contactTemperature - 116 + (luck - 49) / 8 > 0 ? 'tears through' : 'peels clean',
        }),
      ),
      { minLength: 20, maxLength: 40 },
    );
    fc.assert(
      fc.property(sorted, (all) => {
        const fit = bondFit(all);
        fc.pre(fit.kind === 'fitted');
        const { value, low, high } = fit.threshold;
        for (const one of [value, low, high]) expect(Number.isFinite(one)).toBe(true);
        expect(low <= value && value <= high).toBe(true);
      }),
      { numRuns: 100 },
    );
  });

  test('a contact temperature that is no number is refused', () => {
    expect(errorText(() => bondFit([...MIXED, ...joints('peels clean', Number.NaN)]))).toMatch(
      /must be a number/,
    );
  });
});

test('hardly any difference between hot and cold joints gives no limits, so no figure', () => {
  const mixed = [
    ...joints('peels clean', 100, 110, 120, 105),
    ...joints('tears through', 115, 108, 125, 130),
  ];
  expect(bondFit(mixed)).toEqual({
    kind: 'no threshold',
    joints: 8,
    because: 'heat does not tell',
  });
});

describe('joints that give no figure', () => {
  test('all bonded: a limit below which the threshold likely lies, the fourth coolest', () => {
    const fit = bondFit(joints('tears through', 124, 118, 121, 119, 130, 127));
    expect(fit).toEqual({ kind: 'one side', joints: 6, is: 'below', limit: 124 });
    if (fit.kind === 'fitted') return;
    expect(noBondText(fit, 'metric')).toBe(
      'all 6 joints bonded, so the bond temperature is likely below 124 °C; how far below they do not tell, and the figure in use stays',
    );
  });

  test('none bonded: a limit above which it lies', () => {
    const fit = bondFit(joints('peels clean', 101, 108, 110, 104));
    expect(fit).toEqual({ kind: 'one side', joints: 4, is: 'above', limit: 101 });
    if (fit.kind === 'fitted') return;
    expect(noBondText(fit, 'metric')).toBe(
      'none of 4 joints bonded, so the bond temperature is likely above 101 °C; how far above they do not tell: pour hotter before you tear more',
    );
  });

  test.each([
    { all: joints('tears through', 120, 121) },
    { all: [...joints('peels clean', 110, 112), ...joints('tears through', 120, 121, 122)] },
    { all: [...joints('peels clean', 110), ...joints('tears through', 118, 120, 121, 122, 123)] },
  ])('too few joints, or of one outcome: $all.length', ({ all }) => {
    const fit = bondFit(all);
    expect(fit).toEqual({ kind: 'no threshold', joints: all.length, because: 'too few' });
    if (fit.kind === 'fitted') return;
    expect(noBondText(fit, 'US')).toBe(
      `${all.length} joints tell too little: it takes six, with two that held and two that gave way among them`,
    );
  });

  test('hot joints that peel while cold ones hold are no threshold', () => {
    const fit = bondFit([
      ...joints('peels clean', 122, 124, 126, 128),
      ...joints('tears through', 104, 106, 108, 110),
    ]);
    expect(fit).toEqual({ kind: 'no threshold', joints: 8, because: 'heat does not tell' });
    if (fit.kind === 'fitted') return;
    expect(noBondText(fit, 'US')).toBe(
      'whether a joint holds does not go with its contact temperature here: look for oil, release agent, dust or water on the layers',
    );
  });
});

test('bondTexts says value, limits and what weakens them, in the shop’s units', () => {
  const apart = [
    ...joints('peels clean', 106, 108, 111),
    ...joints('tears through', 119, 121, 124),
  ];
  const [first, second] = bondTexts(fitted(apart), 'metric');
  expect(first).toMatch(
    /^half of the joints bond at 115 °C, nine in ten at \d+ °C; the first is between \d+ °C and \d+ °C nine times out of ten$/,
  );
  expect(second).toBe(
    'every joint up to 111 °C gave way and every joint from 119 °C held: tear some poured in between',
  );
});
