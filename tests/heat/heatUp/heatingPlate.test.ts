import { expect, test } from 'vitest';
import { plateHeatCapacity } from '../../../shared/heat/heatUp/heatingPlate.ts';
import { heatUpCourse } from '../../../shared/heat/heatUp/heatUpCourse.ts';
import { errorText } from '../errorText.ts';

test('without loss the capacity is the energy over the rise', () => {
  const bare = { watts: 1500, seconds: 240, rise: 110, lossConductance: 0 };
  // 1500 W for 240 s over 110 K, by hand.
  expect(plateHeatCapacity(bare)).toBeNear(3272.727, { relative: 1e-6 });
  // A loss next to nothing changes next to nothing.
  expect(plateHeatCapacity({ ...bare, lossConductance: 1e-6 })).toBeNear(3272.727, {
    relative: 1e-6,
  });
});

test.each([0.2, 2, 10])(
  'a plate of that capacity warms up bare in the time it came from, loss %d W/K',
  (lossConductance) => {
    const bare = { watts: 1500, seconds: 300, rise: 110, lossConductance };
    const plate = {
      kind: 'heated',
      setting: 132,
      watts: 1500,
      heatCapacity: plateHeatCapacity(bare),
      lossConductance,
      deadBand: 0,
    } as const;
    // A mold that hardly touches it, on a plate otherwise bare.
    const molds = [{ length: 0.01, width: 0.01, height: 0.001, contactConductance: 1e-3 }];
    const { samples } = heatUpCourse(
      { plate, molds, roomTemperature: 22 },
      { target: 30, duration: 300, interval: 300 },
    );
    // The mold takes a millionth of the power.
    expect(samples[1]?.plate ?? 0).toBeNear(132, { absolute: 1e-3 });
  },
);

test('a loss that the heater cannot carry is named', () => {
  expect(
    errorText(() =>
      plateHeatCapacity({ watts: 1000, seconds: 300, rise: 100, lossConductance: 10 }),
    ),
  ).toBe('plate heat loss must be less than 10, got 10');
});
