import { describe, expect, test } from 'vitest';
import type { LayerReading } from '../../../shared/heat/solver/layerReading.ts';
import { layerWindow } from '../../../shared/heat/solver/layerWindow.ts';
import { secondsAbove } from '../../../shared/heat/solver/secondsAbove.ts';
import { solveLayers } from '../../../shared/heat/solver/solveLayers.ts';
import { eliminate, solveTridiagonal } from '../../../shared/heat/solver/solveTridiagonal.ts';

function reading(time: number, mean: number, surface = mean): LayerReading {
  return { time, mean, surface };
}

describe('layerWindow', () => {
  const wanted = { set: 92, firm: 110, needed: 74 };

  test('counts from the first reading, on straight lines where two readings are all there is', () => {
    const window = layerWindow([reading(100, 152), reading(160, 32)], wanted);
    expect(window.open).toEqual({ kind: 'seconds', seconds: 30 });
    expect(window.earliest).toEqual({ kind: 'seconds', seconds: 21 });
    expect(window.latest).toEqual({ kind: 'seconds', seconds: 39 });
  });

  test('bends to a third reading: an exponential within 0.1 % at steps of 7 %', () => {
    const times = [93, 100, 107];
    const decay = times.map((time) => reading(time, 200 * Math.exp(-time / 100)));
    const exact = 100 * Math.log(200 / 70) - 93;
    const { open } = layerWindow(decay, { ...wanted, set: 70 });
    // The third derivative is left out.
    expect(open.kind === 'seconds' ? open.seconds : Number.NaN).toBeNear(exact, {
      relative: 0.001,
    });
  });

  test('knows a layer that never falls, and one that starts below', () => {
    expect(layerWindow([reading(0, 158), reading(60, 120)], wanted)).toEqual({
      open: { kind: 'stays open', endMean: 120 },
      earliest: { kind: 'never firm' },
      latest: { kind: 'any time' },
      surfaceNeeded: 74,
    });
    expect(layerWindow([reading(0, 70), reading(60, 60)], wanted)).toEqual({
      open: { kind: 'sets at once' },
      earliest: { kind: 'at once' },
      latest: { kind: 'too late from the start' },
      surfaceNeeded: 74,
    });
  });

  test('the first fall counts, whatever a climbing mold does later', () => {
    const readings = [reading(0, 158), reading(60, 98), reading(120, 38), reading(180, 158)];
    const { open } = layerWindow(readings, wanted);
    expect(open).toEqual({ kind: 'seconds', seconds: 66 });
  });
});

test('secondsAbove adds every spell above, reheating included', () => {
  const readings = [reading(0, 126), reading(10, 116), reading(20, 106), reading(30, 126)];
  expect(secondsAbove(readings, 116)).toBe(10 + 5);
  expect(secondsAbove(readings, 130)).toBe(0);
  expect(secondsAbove(readings, 100)).toBe(30);
});

test('a chain of cells is solved: its matrix times the solution is the right side', () => {
  const chain = {
    capacities: Float64Array.of(3, 2, 1, 5),
    conductances: Float64Array.of(0.5, 1, 2, 3, 0.25),
  };
  const [w = 0, x = 0, y = 0, z = 0] = solveTridiagonal(
    eliminate(chain, 2),
    Float64Array.of(1, 2, 3, 4),
  );
  const product = [
    (3 + 1 + 2) * w - 2 * x,
    -2 * w + (2 + 2 + 4) * x - 4 * y,
    -4 * x + (1 + 4 + 6) * y - 6 * z,
    -6 * y + (5 + 6 + 0.5) * z,
  ];
  product.forEach((value, row) => {
    // Rounding.
    expect(value).toBeNear(row + 1, { absolute: 1e-14 });
  });
});

describe('what a solved stack hands out', () => {
  const pours = [0, 90].map((time) => ({ time, thickness: 0.003, temperature: 158 }));
  const solved = solveLayers({ pours, mold: 60, until: 300, profileTimes: [90, 30] });

  test('readings are few, in order, from the pour to the end, two at a landing', () => {
    for (const layer of solved.layers) {
      const times = layer.readings.map(({ time }) => time);
      expect(times.length).toBeLessThan(120);
      expect(times[0]).toBe(layer.poured);
      expect(times[times.length - 1]).toBe(300);
      expect(times).toEqual([...times].sort((one, other) => one - other));
    }
    const [before, after] = solved.layers[0]?.readings.filter(({ time }) => time === 90) ?? [];
    expect(before?.surface).toBe(solved.layers[0]?.joint?.surfaceBefore);
    // The joint is drawn between cells, the contact between surfaces.
    const contact = solved.layers[0]?.joint?.contactTemperature ?? Number.NaN;
    expect(after?.surface).toBeNear(contact, { absolute: 0.2 });
  });

  test('between two readings nothing moves by more than a step of the solver', () => {
    for (const { readings } of solved.layers)
      readings.slice(1).forEach(({ time, mean }, index) => {
        const before = readings[index];
        expect(time - (before?.time ?? 0)).toBeLessThanOrEqual(80);
        expect(Math.abs(mean - (before?.mean ?? 0))).toBeLessThan(5);
      });
  });

  test('profiles come in order of time, at a pour just after it, from the metal to the surface', () => {
    expect(solved.profiles.map(({ time }) => time)).toEqual([30, 90]);
    const [early, late] = solved.profiles;
    // Ends, 16 cells a layer and a joint.
    expect(early?.heights.length).toBe(18);
    expect(late?.heights.length).toBe(35);
    expect(early?.heights[17]).toBe(0.003);
    expect(late?.heights[34]).toBe(0.006);
    // Nothing but the air has touched the new layer.
    expect(late?.temperatures[30]).toBe(158);
    // As at a landing above.
    const contact = solved.layers[0]?.joint?.contactTemperature ?? Number.NaN;
    expect(late?.temperatures[17]).toBeNear(contact, { absolute: 0.2 });
  });
});
