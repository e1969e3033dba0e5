import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CoolDown, coolToDemold } from '../../shared/heat/coolToDemold.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from './errorText.ts';

const INCH = 0.0254;
const MOLD = { length: 6 * INCH, width: 4 * INCH, height: INCH, roomTemperature: 22 };
const COOL_DOWN: CoolDown = {
  mold: MOLD,
  moldStart: 110,
  castingStart: 110,
  castingDepth: 0.004,
};

function seconds(cooling: CoolDown): number {
  const result = coolToDemold(cooling);
  return result.kind === 'reached' ? result.seconds : Number.NaN;
}

/** Mold and casting stepped in time, without the closed form. */
function steppedCasting(cooling: CoolDown, end: number, steps: number): number {
  const result = coolToDemold(cooling);
  if (result.kind !== 'reached') return Number.NaN;
  const surroundings = cooling.plateTemperature ?? MOLD.roomTemperature;
  const width = end / steps;
  let { moldStart: mold, castingStart: casting } = cooling;
  for (let step = 0; step < steps; step += 1) {
    const next = mold + ((surroundings - mold) * width) / result.moldTimeConstant;
    casting += (((mold + next) / 2 - casting) * width) / result.castingTimeConstant;
    mold = next;
  }
  return casting;
}

describe('coolToDemold', () => {
  test('a thin casting leaves the time to the mold: 110 to 85 °C in 18 min on a board (HEATSTUDY)', () => {
    const thin = { ...COOL_DOWN, castingDepth: 1e-5, demoldTemperature: 85 };
    // Whole minutes.
    expect(seconds(thin) / 60).toBeNear(18, { absolute: 0.5 });
  });

  test('a casting 4 mm from its metal lags by 82 s', () => {
    const found = coolToDemold(COOL_DOWN);
    // 1.6e-5 / (2.4674 x 7.8947e-8) = 82.14, by hand.
    expect(found.kind === 'reached' ? found.castingTimeConstant : Number.NaN).toBeNear(82.1, {
      absolute: 0.05,
    });
  });

  test('a cavity that is no slab lags longer by its shape factor', () => {
    const lag = (change: Partial<CoolDown>) => {
      const found = coolToDemold({ ...COOL_DOWN, ...change });
      return found.kind === 'reached' ? found.castingTimeConstant : Number.NaN;
    };
    expect(lag({ shapeFactor: 1.5 })).toBeNear(1.5 * lag({}), { relative: 1e-12 }); // arithmetic only
    // Two slabs of which one is as thick by the root of the factor.
    const thicker = COOL_DOWN.castingDepth * Math.sqrt(1.5);
    expect(seconds({ ...COOL_DOWN, shapeFactor: 1.5 })).toBeNear(
      seconds({ ...COOL_DOWN, castingDepth: thicker }),
      { relative: 1e-9 },
    );
  });

  test('agrees with both lags stepped in time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.002, max: 0.02, noNaN: true }),
        evenReal(0, 50),
        fc.double({ min: 45, max: 80, noNaN: true }),
        (castingDepth, hotter, demoldTemperature) => {
          const castingStart = 110 + hotter;
          const cooling = { ...COOL_DOWN, castingDepth, castingStart, demoldTemperature };
          // First-order steps: a twenty-thousandth of the time each.
          expect(steppedCasting(cooling, seconds(cooling), 20_000)).toBeNear(demoldTemperature, {
            absolute: 0.02,
          });
        },
      ),
      { numRuns: 40 },
    );
  });

  test('where both lags are equal nothing jumps', () => {
    const board = coolToDemold(COOL_DOWN);
    const mold = board.kind === 'reached' ? board.moldTimeConstant : Number.NaN;
    const equal = Math.sqrt((mold * Math.PI ** 2 * 0.15) / (4 * 1000 * 1900));
    const at = (factor: number) => seconds({ ...COOL_DOWN, castingDepth: equal * factor });
    // A thousandth in depth moves the time by about a thousandth.
    expect(at(1)).toBeNear((at(0.999) + at(1.001)) / 2, { relative: 1e-5 });
    expect(steppedCasting({ ...COOL_DOWN, castingDepth: equal }, at(1), 20_000)).toBeNear(60, {
      absolute: 0.02,
    });
  });

  test('a fan and a cold plate are each faster, until the casting governs', () => {
    const still = seconds(COOL_DOWN);
    const fan = seconds({ ...COOL_DOWN, mold: { ...MOLD, lossCoefficient: 30 } });
    const cold = {
      ...COOL_DOWN,
      mold: { ...MOLD, contactConductance: 500 },
      plateTemperature: 15,
      castingDepth: 0.008,
    };
    expect(fan).toBeLessThan(still);
    expect(seconds(cold)).toBeLessThan(fan);
    expect(coolToDemold(COOL_DOWN)).toMatchObject({ governs: 'mold' });
    expect(coolToDemold(cold)).toMatchObject({ governs: 'casting' });
  });

  test('deeper castings never come out sooner', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.02, noNaN: true }), (castingDepth) => {
        const deeper = { ...COOL_DOWN, castingDepth: castingDepth * 1.1 };
        expect(seconds(deeper)).toBeGreaterThan(seconds({ ...COOL_DOWN, castingDepth }));
      }),
    );
  });

  test('a room as warm as the demold temperature never gets there', () => {
    const hot = { ...COOL_DOWN, mold: { ...MOLD, roomTemperature: 60 } };
    expect(coolToDemold(hot)).toEqual({
      kind: 'unreachable',
      because: 'surroundings not below the demold temperature',
      settled: 60,
    });
  });

  test('a cold casting may come out at once', () => {
    expect(seconds({ ...COOL_DOWN, moldStart: 50, castingStart: 55 })).toBe(0);
  });
});

test('bad figures are named', () => {
  const bad = (change: Partial<CoolDown>) =>
    errorText(() => coolToDemold({ ...COOL_DOWN, ...change }));
  expect(bad({ castingStart: 100 })).toBe(
    'casting temperature must be at least 110 °C, got 100 °C',
  );
  expect(bad({ moldStart: Number.NaN })).toBe(
    'mold temperature must be a number (°C), got not a number',
  );
  expect(bad({ castingDepth: 0 })).toBe('casting depth must be greater than 0 m, got 0 m');
  expect(bad({ shapeFactor: 0 })).toBe('shape factor must be greater than 0, got 0');
  expect(bad({ conductivity: 0 })).toBe('conductivity must be greater than 0 W/m·K, got 0 W/m·K');
  expect(bad({ castingDensity: 0 })).toBe('density must be greater than 0 kg/m³, got 0 kg/m³');
  expect(bad({ castingSpecificHeat: 0 })).toBe(
    'specific heat must be greater than 0 J/kg·K, got 0 J/kg·K',
  );
  expect(bad({ demoldTemperature: Number.NaN })).toBe(
    'demold temperature must be a number (°C), got not a number',
  );
});
