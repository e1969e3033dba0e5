import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Shop } from '../../../shared/book/settings/settings.ts';
import type { MoldFacts } from '../../../shared/plan/facts/findMold.ts';
import type { PlateFacts } from '../../../shared/plan/facts/findPlate.ts';
import { usualFigures } from '../../../shared/plan/heat/heatFigures.ts';
import { planPlate } from '../../../shared/plan/heat/planPlate.ts';
import { fromEngine, toEngine } from '../../../shared/units/toEngine.ts';
import { benchMold, benchPlate, benchShop } from './heatBench.ts';

interface Case {
  readonly plate?: Partial<PlateFacts>;
  readonly mold?: Partial<MoldFacts>;
  readonly shop?: Partial<Shop>;
  readonly count?: number;
}

function planned({ plate, mold, shop, count = 1 }: Case = {}) {
  const place = benchPlate({ warmUp: 480, ...plate });
  return planPlate(benchMold(mold), place, benchShop(shop), count);
}

function reachable(given: Case = {}) {
  const outcome = planned(given);
  if (outcome.kind !== 'reachable') throw new Error(outcome.because);
  return outcome;
}

function because(given: Case): string {
  const outcome = planned(given);
  if (outcome.kind !== 'unreachable') throw new Error('the mold gets hot');
  return outcome.because;
}

describe('the setting of planPlate', () => {
  test.each(['US', 'metric'] as const)('in %s units it stands on a step of the dial', (units) => {
    const { setting, plateau, topTarget } = reachable({ shop: { units } });
    const shown = fromEngine(setting, units === 'US' ? 'degF' : 'degC');
    expect(shown).toBeNear(Math.round(shown / 5) * 5, { relative: 1e-12 }); // arithmetic only
    expect(plateau).toBeGreaterThanOrEqual(topTarget + 10);
    // One step lower would settle short of the margin; a degree of the plate is at most one of the top.
    expect(plateau).toBeLessThan(topTarget + 10 + 5);
  });

  test('balances by hand what comes in and goes out', () => {
    // What comes in through the underside, 100 W/m2K, goes out of top and sides.
    const { setting, plateau } = reachable();
    expect(setting).toBeNear(toEngine(270, 'degF'), { relative: 1e-12 }); // arithmetic only
    const loss = (setting - plateau) * 100;
    const exposed = 1 + (2 * 1 * (6 + 4)) / (6 * 4);
    // The default for a bare mold, one figure for all faces near 100 °C, is 10.4 W/m2K.
    expect(loss / (exposed * (plateau - 22))).toBeNear(10.4, { relative: 0.1 });
  });

  test('a dial that reads too high is set higher', () => {
    const high = reachable({ plate: { dialOffset: -10 } });
    const true0 = reachable();
    // Ten kelvins are 18 °F: three or four steps.
    expect((high.setting - true0.setting) * 1.8).toBeGreaterThan(14);
    expect((high.setting - true0.setting) * 1.8).toBeLessThan(21);
  });

  test('never leaves the range of the dial', () => {
    expect(reachable({ plate: { lowestSetting: 160 } }).setting).toBe(160);
    expect(reachable({ plate: { highestSetting: 124 } }).setting).toBe(124);
  });

  test('a lid does not lower it, and the heat-up is shorter', () => {
    const [bare, lid] = [reachable(), reachable({ plate: { lid: 'lid' } })];
    expect(lid.setting).toBe(bare.setting);
    expect(lid.heatUp).toBeLessThan(0.95 * bare.heatUp);
    expect(lid.lidOff).toBeNear(bare.plateau, { relative: 1e-12 });
    expect(bare).not.toHaveProperty('lidOff');
  });
});

describe('planPlate', () => {
  test('tells the top at its target and where it climbs from there', () => {
    const { climb, top, topTarget, boilingPoint, samples } = reachable();
    expect(top).toBe(topTarget);
    expect(topTarget).toBe(boilingPoint + 3);
    expect(climb[0]?.temperature).toBeNear(topTarget, { absolute: 1e-3 }); // steps of 0.001 K
    expect(samples).toHaveLength(41);
  });

  test('takes figures of its own in place of the plate’s', () => {
    const plate = benchPlate({ warmUp: 480 });
    const figures = { ...usualFigures(plate, benchShop()), contactConductance: 200 };
    const own = planPlate(benchMold(), plate, benchShop(), 1, figures);
    expect(own.setting).toBe(reachable({ plate: { contactConductance: 200 } }).setting);
  });

  test('four molds share the watts: later than one, and sooner with more', () => {
    const weak = { watts: 500 };
    expect(reachable({ count: 4, plate: weak }).heatUp).toBeGreaterThan(
      1.1 * reachable({ count: 1, plate: weak }).heatUp,
    );
    expect(reachable({ count: 4 }).heatUp).toBeLessThan(
      reachable({ count: 4, plate: weak }).heatUp,
    );
  });
});

describe('planPlate without an answer says why, and what would help', () => {
  test.each<{ what: string; given: Case; text: string }>([
    {
      what: 'a dial that ends too low for a bare mold',
      given: { plate: { highestSetting: 114 } },
      text: 'at the highest setting of Long griddle, 237 °F, the mold top settles at 209 °F, short of the 218 °F that it must read (water boils at 212 °F here): lay a lid over the mold, flatten its contact with the plate, or use a plate that can be set to 270 °F',
    },
    {
      what: 'one that needs lid and contact together',
      given: { plate: { highestSetting: 108 } },
      text: 'at the highest setting of Long griddle, 226 °F, the mold top settles at 201 °F, short of the 218 °F that it must read (water boils at 212 °F here): lay a lid over the mold and flatten its contact with the plate, or use a plate that can be set to 270 °F',
    },
    {
      what: 'one that has its lid',
      given: { plate: { highestSetting: 108, lid: 'lid' } },
      text: 'at the highest setting of Long griddle, 226 °F, the mold top settles at 212 °F, short of the 218 °F that it must read (water boils at 212 °F here): flatten its contact with the plate, or use a plate that can be set to 270 °F',
    },
    {
      what: 'a dial that ends below the target',
      given: { plate: { highestSetting: 100 } },
      text: 'at its highest setting, 212 °F, Long griddle is not as hot as the 218 °F that the mold top must read (water boils at 212 °F here): use a plate that can be set to 270 °F',
    },
    {
      what: 'too few watts for the molds',
      given: { plate: { watts: 150 }, count: 4 },
      text: 'set to 270 °F, Long griddle stalls at 234 °F, since its 150 W carry 4 molds no further, and the mold top settles at 207 °F, short of the 218 °F that it must read (water boils at 212 °F here): lay a lid over the mold, heat 2 molds at a time, or use a plate of 300 W or more',
    },
    {
      what: 'neither dial nor watts',
      given: { plate: { watts: 200, highestSetting: 112 }, count: 4 },
      text: 'at the highest setting of Long griddle, 234 °F, the mold top settles at 206 °F, short of the 218 °F that it must read (water boils at 212 °F here): lay a lid over the mold, or use a plate of 300 W or more that can be set to 270 °F',
    },
    {
      what: 'next to no contact',
      given: { plate: { contactConductance: 4 } },
      text: 'at the highest setting of Long griddle, 399 °F, the mold top settles at 135 °F, short of the 218 °F that it must read (water boils at 212 °F here): flatten its contact with the plate',
    },
    {
      what: 'a heater that warms nothing',
      given: {
        plate: { watts: 1 },
        mold: { blockLength: 3, blockWidth: 3, blockHeight: 1 },
        count: 9,
      },
      text: 'set to 265 °F, Long griddle stalls at 71 °F, since its 1 W carry 9 molds no further, and the mold top settles at 71 °F, short of the 218 °F that it must read (water boils at 212 °F here): no lid, flatter contact or hotter plate alone is enough, so use a smaller mold',
    },
    {
      what: 'metric, up the mountains',
      given: { plate: { highestSetting: 100 }, shop: { units: 'metric', elevation: 2000 } },
      text: 'at the highest setting of Long griddle, 100 °C, the mold top settles at 88 °C, short of the 97 °C that it must read (water boils at 93 °C here): use a plate that can be set to 125 °C',
    },
  ])('$what', ({ given, text }) => {
    expect(because(given)).toBe(text);
  });

  test('what it tells to do works, whatever the plate', () => {
    const plates = fc.record({
      highestSetting: fc.double({ min: 95, max: 130, noNaN: true }),
      watts: fc.double({ min: 60, max: 600, noNaN: true }),
      contactConductance: fc.double({ min: 20, max: 300, noNaN: true }),
    });
    let tried = 0;
    fc.assert(
      fc.property(plates, fc.integer({ min: 1, max: 5 }), (plate, count) => {
        const outcome = planned({ plate, count });
        fc.pre(outcome.kind !== 'reachable' && !/alone is enough/.test(outcome.because));
        const remedies = outcome.because.replace(/^.*here\): /, '').split(/, (?:or )?/);
        for (const remedy of remedies) {
          const changed = {
            plate: { ...plate, ...changeOf(remedy) },
            count: countOf(remedy) ?? count,
          };
          const after = reachable(changed);
          expect(after.heatUp, remedy).toBeLessThan(1.1 * 7200); // tried with quick figures
          tried += 1;
        }
      }),
      { numRuns: 40 },
    );
    expect(tried).toBeGreaterThan(30);
  });
});

/** What doing a remedy changes about a griddle. */
function changeOf(remedy: string): Partial<PlateFacts> {
  const dial = /set to (\d+) °F/.exec(remedy);
  const watts = /plate of ([\d,]+) W/.exec(remedy);
  return {
    ...(/lid/.test(remedy) ? { lid: 'lid' as const } : {}),
    ...(/flatten/.test(remedy) ? { contactConductance: 170 } : {}),
    ...(dial ? { highestSetting: toEngine(Number(dial[1]), 'degF') } : {}),
    ...(watts ? { watts: Number(watts[1]?.replace(',', '')) } : {}),
  };
}

function countOf(remedy: string): number | undefined {
  const molds = /heat (\d+) mold/.exec(remedy);
  return molds ? Number(molds[1]) : undefined;
}
