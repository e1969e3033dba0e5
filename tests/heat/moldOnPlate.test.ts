import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moldBalance, moldPlateau } from '../../shared/heat/moldOnPlate.ts';
import { errorText } from './errorText.ts';
import { type HeatUp, moldHeatUp, moldTemperature } from './moldHeatUp.ts';

const INCH = 0.0254;
const MOLD = { length: 6 * INCH, width: 4 * INCH, height: INCH, roomTemperature: 22 };
const HEAT_UP: HeatUp = { mold: MOLD, plateSetting: 132 };

const heatUps = fc.record({
  mold: fc.record({
    length: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
    width: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
    height: fc.double({ min: 0.01, max: 0.1, noNaN: true }),
    roomTemperature: fc.double({ min: 5, max: 35, noNaN: true }),
    contactConductance: fc.double({ min: 40, max: 2000, noNaN: true }),
    lossCoefficient: fc.double({ min: 4, max: 20, noNaN: true }),
  }),
  plateSetting: fc.double({ min: 60, max: 220, noNaN: true }),
  plateWarmUp: fc.constantFrom(0, 60, 300, 900),
});

/** Heat balance of the block stepped in time, without any closed form. */
function steppedTemperature(heatUp: HeatUp, seconds: number, steps: number): number {
  const { mold, plateSetting, plateWarmUp = 0 } = heatUp;
  const { contactConductance = 0, lossCoefficient = 0, roomTemperature } = mold;
  const side = 2 * mold.height * (mold.length + mold.width);
  const foot = mold.length * mold.width;
  const capacity = 2700 * 900 * mold.height * foot;
  const rate = (time: number, block: number) => {
    const warm = plateWarmUp > 0 ? Math.min(1, time / plateWarmUp) : 1;
    const plate = roomTemperature + warm * (plateSetting - roomTemperature);
    const gain = contactConductance * foot * (plate - block);
    return (gain - lossCoefficient * (foot + side) * (block - roomTemperature)) / capacity;
  };
  const width = seconds / steps;
  let block = heatUp.startTemperature ?? roomTemperature;
  for (let step = 0; step < steps; step += 1) {
    const half = block + (width / 2) * rate(step * width, block);
    block += width * rate((step + 0.5) * width, half);
  }
  return block;
}

describe('moldBalance', () => {
  test('a 6 x 4 x 1 in block has 1.83 times its footprint exposed', () => {
    // Two by (6 + 4) times 1 over 24, plus the top: exact.
    expect(moldBalance(MOLD).exposure).toBeNear(1 + 20 / 24, { relative: 1e-12 });
  });

  test('contact decides the time constant: 518 s at 100 W/m2K', () => {
    // 2700 x 900 x 0.0254 / (100 + 10.4 x 1.8333) = 61 722 / 119.07, by hand.
    expect(moldBalance(MOLD).timeConstant).toBeNear(518.4, { absolute: 0.05 });
  });
});

describe('moldHeatUp', () => {
  test('agrees with the balance stepped in time, plate warm-up or not', () => {
    fc.assert(
      fc.property(heatUps, fc.double({ min: 10, max: 3000, noNaN: true }), (heatUp, seconds) => {
        const stepped = steppedTemperature(heatUp, seconds, 4000);
        // Second-order steps over a kink at the end of the warm-up.
        expect(moldTemperature(heatUp, seconds)).toBeNear(stepped, { absolute: 0.02 });
      }),
      { numRuns: 60 },
    );
  });

  test('the time it gives is when the mold is there', () => {
    fc.assert(
      fc.property(heatUps, fc.double({ min: 0.05, max: 0.98, noNaN: true }), (heatUp, share) => {
        const { plateau } = moldHeatUp(heatUp, 0);
        const target =
          heatUp.mold.roomTemperature + share * (plateau - heatUp.mold.roomTemperature);
        const { time } = moldHeatUp(heatUp, target);
        const seconds = time.kind === 'reached' ? time.seconds : Number.NaN;
        // The root’s last digits inside the warm-up, rounding after it.
        expect(moldTemperature(heatUp, seconds)).toBeNear(target, { absolute: 1e-6 });
      }),
    );
  });

  test('at the plateau gain and loss balance', () => {
    fc.assert(
      fc.property(heatUps, (heatUp) => {
        const { plateau } = moldHeatUp(heatUp, 0);
        const { gain, loss } = moldBalance(heatUp.mold);
        const lost = loss * (plateau - heatUp.mold.roomTemperature);
        // Rounding only.
        expect(gain * (heatUp.plateSetting - plateau)).toBeNear(lost, { relative: 1e-9 });
      }),
    );
  });

  test('a slower plate costs at least half its warm-up and no more than all of it, for a mold far from ready', () => {
    const at = (plateWarmUp: number) => moldHeatUp({ ...HEAT_UP, plateWarmUp }, 100).time;
    const [cold, warm] = [at(120), at(0)];
    const delay =
      cold.kind === 'reached' && warm.kind === 'reached' ? cold.seconds - warm.seconds : 0;
    expect(delay).toBeGreaterThan(60);
    expect(delay).toBeLessThan(120);
  });

  test('a mold already there needs no time', () => {
    for (const plateWarmUp of [0, 3600]) {
      const { time } = moldHeatUp({ ...HEAT_UP, startTemperature: 105, plateWarmUp }, 100);
      expect(time).toEqual({ kind: 'reached', seconds: 0 });
    }
  });

  test('a better contact is never slower, and hotter in the end', () => {
    fc.assert(
      fc.property(heatUps, fc.double({ min: 1.05, max: 4, noNaN: true }), (heatUp, factor) => {
        const contactConductance = heatUp.mold.contactConductance * factor;
        const better = { ...heatUp, mold: { ...heatUp.mold, contactConductance } };
        expect(moldTemperature(better, 600)).toBeGreaterThan(moldTemperature(heatUp, 600));
        expect(moldHeatUp(better, 0).plateau).toBeGreaterThan(moldHeatUp(heatUp, 0).plateau);
      }),
    );
  });
});

test('a mold on an insulating board takes 18 min from 110 to 85 °C (HEATSTUDY)', () => {
  const board = { ...MOLD, contactConductance: 0 };
  const { timeConstant } = moldBalance(board);
  const minutes = (timeConstant * Math.log((110 - 22) / (85 - 22))) / 60;
  // Printed in whole minutes.
  expect(minutes).toBeNear(18, { absolute: 0.5 });
});

test('bad figures are named', () => {
  const bad = (change: object) => () => moldBalance({ ...MOLD, ...change });
  expect(errorText(bad({ length: 0 }))).toBe('block length must be greater than 0 m, got 0 m');
  expect(errorText(bad({ width: -1 }))).toBe('block width must be greater than 0 m, got -1 m');
  expect(errorText(bad({ height: 0 }))).toBe('block height must be greater than 0 m, got 0 m');
  expect(errorText(bad({ contactConductance: -1 }))).toBe(
    'contact conductance must be at least 0 W/m²·K, got -1 W/m²·K',
  );
  expect(errorText(bad({ lossCoefficient: 0 }))).toBe(
    'mold heat loss must be greater than 0 W/m²·K, got 0 W/m²·K',
  );
  expect(errorText(bad({ density: 0 }))).toBe(
    'metal density must be greater than 0 kg/m³, got 0 kg/m³',
  );
  expect(errorText(bad({ specificHeat: 0 }))).toBe(
    'metal specific heat must be greater than 0 J/kg·K, got 0 J/kg·K',
  );
});

test('temperatures that are no numbers are named', () => {
  expect(errorText(() => moldBalance({ ...MOLD, roomTemperature: Number.NaN }))).toBe(
    'room temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => moldPlateau(moldBalance(MOLD), Number.NaN))).toBe(
    'plate temperature must be a number (°C), got not a number',
  );
});
