import { describe, expect, test } from 'vitest';
import { InputError } from '../../../shared/errors/InputError.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';

function warningsOf(order: string, changes: DemoChanges = {}): readonly string[] {
  const plan = planOrder(demoBook(changes), order);
  if (plan.kind === 'missing') throw new Error(plan.missing.map((gap) => gap.text).join('; '));
  return plan.warnings.map((warning) => `${warning.about}: ${warning.text}`);
}

describe('planOrder warns in plain words, with figures and a cure', () => {
  test.each<{ what: string; order?: string; changes: DemoChanges; warning: string }>([
    {
      what: 'no record yet',
      order: '2042',
      changes: {},
      warning:
        'pieces: Nothing is logged yet for Two tone in Paddle 3 in, so a yield of 90 % is assumed.',
    },
    {
      what: 'a log row that contradicts itself',
      changes: { pourLog: withChange(DEMO.pourLog, 1, { good: 99 }) },
      warning:
        'pieces: Pour log row 3 is not counted for Creek minnow in Ribbed 4 in: poured and good must both be given, good no more than poured.',
    },
    {
      what: 'a loading above the limit',
      changes: { materials: withChange(DEMO.materials, 5, { maximumLoading: 0.001 }) },
      warning:
        'materials: Pearl powder is 0.2 % of the belly, above its limit of 0.1 %: dose less, or use a stronger colorant.',
    },
    {
      what: 'two doses of one material that only together are above its limit',
      changes: {
        materials: withChange(DEMO.materials, 5, { maximumLoading: 0.0025 }),
        doses: [...DEMO.doses, { ...DEMO.doses[1], amount: 0.125 }],
      },
      // by hand: 0.375 tsp of 4.93 mL at 350 g/L is 0.647 g, over 8 fl oz at 1.03 g/mL, 243.7 g
      warning:
        'materials: Pearl powder is 0.3 % of the belly, above its limit of 0.3 %: dose less, or use a stronger colorant.',
    },
    {
      what: 'a base that bears less than the cook',
      changes: { materials: withChange(DEMO.materials, 0, { maximumTemperature: 175 }) },
      warning:
        'materials: The cook temperature of 351 °F is above the 347 °F that Soft plastisol bears: cook to 347 °F, and ask its maker whether that cooks it through.',
    },
    {
      what: 'an additive that bears less than the cook',
      changes: { materials: withChange(DEMO.materials, 6, { maximumTemperature: 175 }) },
      warning:
        'materials: Stir Fine glitter in after the cook, once the cup is below 347 °F, and never heat that cup above it again.',
    },
    {
      what: 'an additive that bears less than the pour',
      changes: { materials: withChange(DEMO.materials, 6, { maximumTemperature: 160 }) },
      warning:
        'materials: The back pours at 329 °F, above the 320 °F that Fine glitter bears: pour cooler, or leave it out.',
    },
    {
      what: 'a density that is not there',
      changes: { materials: withChange(DEMO.materials, 0, { density: undefined }) },
      warning:
        'materials: The density of Soft plastisol is not in Materials, so 1.04 g/mL is assumed: weigh a measured cup.',
    },
    {
      what: 'materials without a safety data sheet',
      changes: {
        materials: withChange(withChange(DEMO.materials, 0, { safetySheet: undefined }), 3, {
          safetySheet: undefined,
        }),
      },
      warning:
        'materials: No SDS is listed in Materials for Soft plastisol, Black dispersion: find it before you heat anything.',
    },
    {
      what: 'a conductance that is not measured',
      changes: { plates: withChange(DEMO.plates, 0, { contactConductance: undefined }) },
      warning:
        'heat: The contact conductance of Long griddle is not measured, so the heat-up may take half or twice as long: go by the mold top, and log a heat trial.',
    },
    {
      what: 'molds that cover more than the plate',
      changes: { plates: withChange(DEMO.plates, 0, { usableLength: 0.2, usableWidth: 0.2 }) },
      warning:
        'heat: 2 × Ribbed 4 in does not fit on Long griddle: it covers 125 % of the evenly hot part. Use fewer molds at a time, or a larger plate.',
    },
    {
      what: 'a mold longer than the plate',
      changes: {
        plates: withChange(DEMO.plates, 0, { usableLength: 0.17, usableWidth: 0.9 }),
        molds: withChange(DEMO.molds, 0, { blockLength: 0.3, blockWidth: 0.2 }),
      },
      warning:
        'heat: 2 × Ribbed 4 in does not fit on Long griddle: one mold is longer or wider than the evenly hot part. Use fewer molds at a time, or a larger plate.',
    },
    {
      what: 'a plate whose size is not there',
      changes: { plates: withChange(DEMO.plates, 0, { usableLength: undefined }) },
      warning:
        'heat: The usable length and width of Long griddle are not in Plates, so whether the molds fit was not checked.',
    },
    {
      what: 'a mold slow to heat',
      changes: {
        plates: withChange(DEMO.plates, 0, { contactConductance: 40, warmUp: 900 }),
        molds: withChange(DEMO.molds, 0, { blockHeight: 0.05, finish: 'anodized' }),
      },
      warning:
        'heat: The mold takes 65 min to get hot: a lid over it or a flatter contact with the plate shortens that.',
    },
    {
      what: 'a mold slow to heat under its lid',
      changes: {
        plates: withChange(DEMO.plates, 0, { contactConductance: 30, warmUp: 1800, lid: 'lid' }),
        molds: withChange(DEMO.molds, 0, { blockHeight: 0.05, finish: 'anodized' }),
      },
      warning:
        'heat: The mold takes 78 min to get hot: a flatter contact with the plate shortens that.',
    },
    {
      what: 'a mold that only its lid keeps hot',
      changes: { plates: withChange(DEMO.plates, 0, { highestSetting: 112, lid: 'lid' }) },
      warning:
        'heat: Without its lid the mold top falls back to 212 °F, below the 215 °F that it must read: lift the lid only to pour, or use a hotter plate.',
    },
    {
      what: 'a round longer than a cup stays hot',
      changes: {},
      warning:
        'cups: Pouring a layer into 16 cavities takes 2 min 10 s, and a cup stays hot enough for 71 s: have a second cup hot, or reheat after 8 cavities.',
    },
    {
      what: 'a pour hotter than the cook',
      changes: { patterns: withChange(DEMO.patterns, 1, { pourTemperature: 180 }) },
      warning:
        'cups: The belly pours at 356 °F, hotter than the cup is cooked: pour at 351 °F or less.',
    },
    {
      what: 'a heat budget that is spent',
      changes: { shop: { heatBudget: 300 } },
      warning:
        'cups: One cup is heated 6 times and uses 158 % of its heat budget: cook smaller cups fresh for the later rounds.',
    },
    {
      what: 'a cavity that cannot hold what it is said to',
      changes: { molds: withChange(DEMO.molds, 0, { cavityVolume: 2e-5 }) },
      warning:
        'layers: A cavity of Ribbed 4 in is said to hold 0.7 fl oz, more than its length × width × depth of 0.5 fl oz: measure it again in Molds.',
    },
    {
      what: 'a run after the due date',
      changes: { orders: withChange(DEMO.orders, 0, { pourOn: '2026-12-08' }) },
      warning:
        'time: The run is set for 2026-12-08, after the due date 2026-12-04: pour earlier, or agree a new date.',
    },
    {
      what: 'a setting of the shop that was refused',
      changes: {
        problems: [
          {
            sheet: 'Shop',
            row: 9,
            heading: 'Hard stop',
            error: new InputError({
              field: 'hard stop',
              rule: { kind: 'at most', limit: 384.8 },
              value: 500,
              unit: 'degF',
            }),
          },
        ],
      },
      warning:
        'heat: Shop row 9: hard stop must be at most 384.8 °F, got 500 °F, so the default is used.',
    },
  ])('$what', ({ order = '2041', changes, warning }) => {
    expect(warningsOf(order, changes)).toContain(warning);
  });

  test('a window shorter than the round is named with both times', () => {
    const plates = withChange(DEMO.plates, 0, { lowestSetting: undefined, highestSetting: 72 });
    const warnings = warningsOf('2041', { plates, shop: { topTarget: -30 } });
    expect(warnings.filter((one) => one.startsWith('layers: '))).toEqual([
      expect.stringMatching(
        /^layers: The vein must follow within .+ s, and a cavity waits 2 min 55 s while the others are filled\.$/,
      ),
      expect.stringMatching(
        /^layers: The back must follow within .+ s, and a cavity waits 2 min 45 s while the others are filled\.$/,
      ),
      'layers: What mends it: 6 cavities at a time through all layers, or cups at 350 °F.',
    ]);
  });

  test('a mold too hot to carry a layer closes the window with its reason', () => {
    const warnings = warningsOf('2041', { shop: { topTarget: 40 } });
    expect(warnings).toContain(
      'layers: The vein has no window on the layer below: even 20 min later its surface is above the 230 °F at which it carries the next layer.',
    );
    expect(warnings).toContainEqual(
      expect.stringMatching(/^layers: What mends it: a mold top of \d+ °F at the first pour\.$/),
    );
  });

  test('a sound order with a record has nothing to say about pieces, time or materials', () => {
    const abouts = warningsOf('2041').map((one) => one.split(':')[0]);
    expect(abouts).toEqual(['cups']);
  });
});
