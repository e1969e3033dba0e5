import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coolToDemold } from '../../../shared/heat/coolToDemold.ts';
import { blockPlateau, blockSetting } from '../../../shared/heat/heatUp/blockInRoom.ts';
import { type BlockOnPlate, blockTime } from '../../../shared/heat/heatUp/blockTime.ts';
import { coolingLoss } from '../../../shared/heat/heatUp/coolingLoss.ts';
import { heatUpCourse } from '../../../shared/heat/heatUp/heatUpCourse.ts';
import { timeBetween } from '../../../shared/heat/heatUp/timeBetween.ts';
import { errorText } from '../errorText.ts';

const INCH = 0.0254;
const MOLD = { length: 6 * INCH, width: 4 * INCH, height: INCH, contactConductance: 100 };
const BLOCK: BlockOnPlate = {
  mold: MOLD,
  roomTemperature: 22,
  plateSetting: 132,
  plateWarmUp: 0,
};

function seconds(block: BlockOnPlate, target: number): number {
  const time = blockTime(block, target);
  return time.kind === 'reached' ? time.seconds : Number.POSITIVE_INFINITY;
}

/** The same plate for `heatUpCourse`: so heavy that the mold does not slow its straight climb. */
function coursePlate({ plateSetting: setting, plateWarmUp, roomTemperature }: BlockOnPlate) {
  if (plateWarmUp === 0) return { kind: 'held', setting } as const;
  const heatCapacity = 1e9;
  const watts = (heatCapacity * (setting - roomTemperature)) / plateWarmUp;
  return { kind: 'heated', setting, watts, heatCapacity, lossConductance: 0, deadBand: 0 } as const;
}

const blocks = fc.record({
  mold: fc.record({
    length: fc.constant(MOLD.length),
    width: fc.constant(MOLD.width),
    height: fc.double({ min: 0.015, max: 0.06, noNaN: true }),
    contactConductance: fc.double({ min: 50, max: 2000, noNaN: true }),
    finish: fc.constantFrom('machined' as const, 'anodized' as const),
  }),
  roomTemperature: fc.double({ min: 5, max: 35, noNaN: true }),
  plateSetting: fc.double({ min: 60, max: 250, noNaN: true }),
  plateWarmUp: fc.constantFrom(0, 300, 1500),
});

describe('blockTime', () => {
  test('a held plate: 963.409 s to 100 °C (SCIPYHEATUP)', () => {
    // The eight-point rule leaves 2e-6.
    expect(seconds(BLOCK, 100)).toBeNear(963.409, { relative: 5e-6 });
  });

  test('within 0.1 % of the course in steps, up to 99.9 % of the rise', () => {
    const shares = fc.double({ min: 0.05, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(blocks, shares, (block, share) => {
        const { roomTemperature, plateSetting } = block;
        const rise = blockPlateau(block, plateSetting) - roomTemperature;
        const target = roomTemperature + share * rise;
        const setup = { plate: coursePlate(block), molds: [block.mold], roomTemperature };
        const { times } = heatUpCourse(setup, { target, duration: 60, interval: 60 });
        const [time] = times;
        fc.pre(time?.kind === 'reached');
        expect(seconds(block, target)).toBeNear(time.seconds, { relative: 1e-3 });
      }),
      { numRuns: 60 },
    );
  });

  test('a target at or above the plateau is unreachable, and names it', () => {
    const plateau = blockPlateau(BLOCK, 132);
    expect(blockTime(BLOCK, plateau + 0.01)).toEqual({ kind: 'unreachable', plateau });
    expect(blockTime(BLOCK, plateau - 0.01).kind).toBe('reached');
  });

  test('a cold target needs no time', () => {
    expect(blockTime(BLOCK, 22)).toEqual({ kind: 'reached', seconds: 0 });
  });

  test('a target may be reached while the plate still warms', () => {
    const slow = { ...BLOCK, plateWarmUp: 7200 };
    expect(seconds(slow, 60)).toBeGreaterThan(seconds(BLOCK, 60));
    expect(seconds(slow, 60)).toBeLessThan(7200);
  });

  test('bad figures are named', () => {
    expect(errorText(() => blockTime({ ...BLOCK, plateSetting: 20 }, 60))).toBe(
      'plate setting must be greater than room temperature (22 °C), got 20 °C',
    );
    expect(errorText(() => blockTime({ ...BLOCK, roomTemperature: 80 }, 60))).toBe(
      'room temperature must be at most 60 °C, got 80 °C',
    );
    expect(errorText(() => blockTime({ ...BLOCK, plateWarmUp: -1 }, 60))).toBe(
      'plate warm-up must be at least 0 s, got -1 s',
    );
    expect(errorText(() => blockTime(BLOCK, Number.NaN))).toBe(
      'target temperature must be a number (°C), got not a number',
    );
  });
});

describe('blockSetting', () => {
  test('the plateau at the setting is the target and its margin', () => {
    fc.assert(
      fc.property(blocks, ({ mold, roomTemperature, plateSetting }) => {
        const block = { mold, roomTemperature };
        const target = (roomTemperature + blockPlateau(block, plateSetting)) / 2;
        const setting = blockSetting(block, target, 3);
        expect(blockPlateau(block, setting)).toBeNear(target + 3, { absolute: 1e-9 });
      }),
    );
  });

  test('a target not above the room is refused', () => {
    expect(errorText(() => blockSetting(BLOCK, 22))).toBe(
      'target temperature must be greater than room temperature (22 °C), got 22 °C',
    );
  });
});

describe('coolingLoss', () => {
  test('the closed cool-down takes as long with it as the course in steps', () => {
    const heights = fc.double({ min: 0.02, max: 0.05, noNaN: true });
    const starts = fc.double({ min: 80, max: 140, noNaN: true });
    const ends = fc.double({ min: 35, max: 75, noNaN: true });
    const finishes = fc.constantFrom('machined' as const, 'anodized' as const);
    fc.assert(
      fc.property(heights, starts, ends, finishes, (height, from, to, finish) => {
        const mold = { ...MOLD, height, finish };
        const block = { mold, roomTemperature: 22 };
        const lossCoefficient = coolingLoss(block, { from, to });
        const { finish: _, ...metal } = mold;
        const closed = coolToDemold({
          mold: { ...metal, contactConductance: 0, roomTemperature: 22, lossCoefficient },
          moldStart: from,
          castingStart: from,
          castingDepth: 1e-6,
          demoldTemperature: to,
        });
        const duration = closed.kind === 'reached' ? closed.seconds : Number.NaN;
        // Next to no contact stands for the board.
        const alone = { ...mold, contactConductance: 1e-9, startTemperature: from };
        const plate = { kind: 'held', setting: 22.001 } as const;
        const { samples } = heatUpCourse(
          { plate, molds: [alone], roomTemperature: 22 },
          { target: 300, duration, interval: duration },
        );
        expect(samples[1]?.tops[0] ?? Number.NaN).toBeNear(to, { absolute: 0.01 });
      }),
      { numRuns: 40 },
    );
  });

  test('where nothing cools it is still a loss', () => {
    for (const to of [10, 22, 110, 150])
      expect(coolingLoss(BLOCK, { from: 110, to })).toBeGreaterThan(0);
  });
});

describe('timeBetween', () => {
  test('a rate in proportion to what is left gives the logarithm', () => {
    const rate = (temperature: number) => (100 - temperature) / 500;
    const found = timeBetween(rate, { from: 20, to: 99.9, end: 100 });
    // The rule is exact here but for the last digits.
    expect(found).toBeNear(500 * Math.log(80 / 0.1), { relative: 1e-13 });
  });

  test('a rate that bends gives the integral: cooling by the power 1.25', () => {
    const rate = (temperature: number) => -1e-3 * temperature ** 1.25;
    // t = 4 (T^-0.25 - T0^-0.25) / 1e-3, by hand.
    const exact = 4000 * (10 ** -0.25 - 100 ** -0.25);
    expect(timeBetween(rate, { from: 100, to: 10, end: 0 })).toBeNear(exact, { relative: 1e-12 });
  });
});
