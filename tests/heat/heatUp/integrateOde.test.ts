import { describe, expect, test } from 'vitest';
import { integrateOde, type OdePoint } from '../../../shared/heat/heatUp/integrateOde.ts';
import { radiantFlux } from '../../../shared/heat/heatUp/radiantFlux.ts';
import { stateAt } from '../../../shared/heat/heatUp/stateAt.ts';

const SWING = {
  rates: ([place = 0, speed = 0]: readonly number[]) => [speed, -place],
  start: [0, 1],
  from: 0,
  to: 10,
  longestStep: 1,
};

function last(points: readonly OdePoint[]): OdePoint {
  const point = points[points.length - 1];
  if (!point) throw new Error('no point');
  return point;
}

describe('integrateOde', () => {
  test.each([1e-4, 1e-6, 1e-8])(
    'a swing follows sine and cosine within its tolerance %d',
    (tolerance) => {
      const { time, state } = last(integrateOde({ ...SWING, tolerance }));
      expect(time).toBe(10);
      // Errors of some dozens of steps add up.
      expect(state[0] ?? 0).toBeNear(Math.sin(10), { absolute: 50 * tolerance });
      expect(state[1] ?? 0).toBeNear(Math.cos(10), { absolute: 50 * tolerance });
    },
  );

  test('a looser tolerance takes fewer steps', () => {
    const steps = (tolerance: number) => integrateOde({ ...SWING, tolerance }).length;
    expect(steps(1e-4)).toBeLessThan(steps(1e-9));
  });

  test('it stops where it is asked to, and knows the way between its points', () => {
    const stopWhen = ([, speed = 0]: readonly number[]) => -speed;
    const points = integrateOde({ ...SWING, tolerance: 1e-8, longestStep: 0.1, stopWhen });
    // The cubic between points 0.1 apart errs by 0.1^4 / 384.
    expect(last(points).time).toBeNear(Math.PI / 2, { absolute: 1e-6 });
    expect(stateAt(points, 0.777)[0] ?? 0).toBeNear(Math.sin(0.777), { absolute: 1e-6 });
  });

  test('an aluminum panel in an oven, then in the open (INCROPERA, Example 5.3)', () => {
    const capacity = 2770 * 875 * 0.0015;
    const rates =
      (around: number, convection: number) =>
      ([panel = 0]: readonly number[]) => [
        -(convection * (panel - around) + radiantFlux(0.8, panel, around)) / capacity,
      ];
    const common = { from: 0, to: 2000, tolerance: 1e-6, longestStep: 20 };
    const cure = (state: readonly number[]) => (state[0] ?? 0) - 150;
    const heating = integrateOde({ ...common, rates: rates(175, 40), start: [25], stopWhen: cure });
    // Recomputed where the book rounds: 123.08 s.
    expect(last(heating).time).toBeNear(123.08, { absolute: 0.05 });
    const held = integrateOde({ ...common, to: 300, rates: rates(175, 40), start: [150] });
    const cool = (state: readonly number[]) => 37 - (state[0] ?? 0);
    const start = last(held).state;
    const cooling = integrateOde({ ...common, rates: rates(25, 10), start, stopWhen: cool });
    // Recomputed apart as 986.3, with 0 °C at 273 K; the book prints 989.
    const whole = last(heating).time + 300 + last(cooling).time;
    expect(whole).toBeNear(986.3, { relative: 1e-3 });
  });
});
