import { describe, expect, test } from 'vitest';
import { followPlate } from '../../../shared/heat/heatUp/followPlate.ts';
import { heaterEnergy } from '../../../shared/heat/heatUp/heaterEnergy.ts';
import type { HeatingPlate } from '../../../shared/heat/heatUp/heatingPlate.ts';
import { plateRun } from '../../../shared/heat/heatUp/plateRun.ts';
import { steadyPlate } from '../../../shared/heat/heatUp/steadyPlate.ts';

const MOLD = { length: 0.16, width: 0.2, height: 0.03, density: 2700, specificHeat: 900 } as const;
const PLATE = {
  kind: 'heated',
  setting: 130,
  watts: 1500,
  heatCapacity: 5000,
  lossConductance: 0,
  deadBand: 0,
} as const;

function course(plate: HeatingPlate, seconds: number, lossShare: number) {
  const run = plateRun({ plate, molds: [{ ...MOLD, lossShare, count: 2 }], roomTemperature: 22 });
  const points = followPlate(run, { duration: seconds, longest: seconds, done: () => true });
  return { run, points, energy: heaterEnergy(run, points, seconds) };
}

/** Plate and two blocks from 22 to 130 °C: their heat capacities times the rise [J]. */
const STORED = (5000 + 2 * 2700 * 900 * 0.16 * 0.2 * 0.03) * 108;

describe('heaterEnergy', () => {
  test.each([
    ['a control that holds', { deadBand: 0 }],
    ['one swing, then the mean', { deadBand: 20, swing: 'averaged' as const }],
  ])('without loss all that was fed is stored: %s', (_name, control) => {
    const { energy } = course({ ...PLATE, ...control }, 20_000, 1e-9);
    expect(energy).toBeNear(STORED, { relative: 1e-3 }); // the mean of two ends of a step
  });

  test('a heater that is on all the time feeds its watts', () => {
    const { run, points } = course(PLATE, 2000, 1);
    expect(heaterEnergy(run, points, 100)).toBeNear(150_000, { relative: 1e-12 }); // 1500 W for 100 s
    expect(heaterEnergy(run, points, 0)).toBe(0);
  });

  test('long hot, the swing feeds on average what a steady plate draws', () => {
    const swinging = { ...PLATE, lossConductance: 1.5, deadBand: 10, swing: 'followed' } as const;
    const { run, points } = course(swinging, 20_000, 1);
    const { power, duty } = steadyPlate(run.plate, run.molds, run.room);
    expect(power).toBeNear(1500 * duty, { relative: 1e-12 }); // arithmetic only
    const mean = (heaterEnergy(run, points, 20_000) - heaterEnergy(run, points, 10_000)) / 10_000;
    expect(mean).toBeNear(power, { relative: 0.03 }); // a part of a swing at either end
  });

  test('a plate too weak for its setting feeds all its watts, a held one what flows into its molds', () => {
    const weak = course({ ...PLATE, watts: 20 }, 100, 1).run;
    expect(steadyPlate(weak.plate, weak.molds, weak.room)).toMatchObject({ power: 20, duty: 1 });
    const held = course({ kind: 'held', setting: 130 }, 20_000, 1);
    const heated = course(PLATE, 20_000, 1).run;
    const { power } = steadyPlate(held.run.plate, held.run.molds, held.run.room);
    expect(power).toBeNear(steadyPlate(heated.plate, heated.molds, heated.room).power, {
      relative: 1e-9, // the same balance
    });
    const last =
      heaterEnergy(held.run, held.points, 20_000) - heaterEnergy(held.run, held.points, 19_000);
    expect(last / 1000).toBeNear(power, { relative: 1e-3 }); // settled for hours
  });
});
