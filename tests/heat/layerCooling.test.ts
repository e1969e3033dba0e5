import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layerCooling, layerTemperature, timeToFall } from '../../shared/heat/layerCooling.ts';
import type { LayerInMold } from '../../shared/heat/layerInMold.ts';
import { slabSeries } from '../../shared/heat/slabSeries.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from './errorText.ts';

const LAYER = {
  thickness: 0.003,
  startTemperature: 158,
  moldTemperature: 60,
  airTemperature: 38,
  surfaceCoefficient: 12,
  wallCoefficient: 1500,
  conductivity: 0.15,
  density: 1000,
  specificHeat: 1900,
};

const layers = fc.record({
  thickness: fc.double({ min: 0.001, max: 0.012, noNaN: true }),
  startTemperature: fc.double({ min: 145, max: 175, noNaN: true }),
  moldTemperature: fc.double({ min: 20, max: 125, noNaN: true }),
  airTemperature: fc.double({ min: 15, max: 60, noNaN: true }),
  surfaceCoefficient: evenReal(0, 30),
  wallCoefficient: fc.double({ min: 300, max: 5000, noNaN: true }),
});

/** The same slab by explicit finite volumes, independent of any series: surface and mean. */
function steppedLayer(layer: typeof LAYER, seconds: number, cells: number) {
  const { conductivity, density, specificHeat, thickness } = layer;
  const size = thickness / cells;
  const capacity = density * specificHeat * size;
  const between = conductivity / size;
  const toWall = 1 / (1 / layer.wallCoefficient + 0.5 / between);
  const toAir = 1 / (1 / layer.surfaceCoefficient + 0.5 / between);
  const steps = Math.ceil((seconds * 2.5 * between) / capacity);
  const width = seconds / steps;
  let now = Array.from({ length: cells }, () => layer.startTemperature);
  for (let step = 0; step < steps; step += 1) {
    now = now.map((here, cell) => {
      const above = now[cell - 1];
      const below = now[cell + 1];
      const up =
        above === undefined ? toAir * (layer.airTemperature - here) : between * (above - here);
      const down =
        below === undefined ? toWall * (layer.moldTemperature - here) : between * (below - here);
      return here + (width * (up + down)) / capacity;
    });
  }
  const top = now[0] ?? Number.NaN;
  const flux = toAir * (top - layer.airTemperature);
  const mean = now.reduce((sum, one) => sum + one, 0) / cells;
  return { surface: top - (flux * size) / (2 * conductivity), mean };
}

describe('slabSeries with an insulated face is the plane wall of the handbooks', () => {
  test.each([
    { biot: 0.01, zeta: 0.0998, first: 1.0017, source: 'INCROPERA, Table 5.1' },
    { biot: 0.1, zeta: 0.3111, first: 1.0161, source: 'CENGEL, Table 4-2' },
    { biot: 0.4, zeta: 0.5932, first: 1.058, source: 'INCROPERA, Table 5.1' },
    { biot: 1, zeta: 0.8603, first: 1.1191, source: 'CENGEL, Table 4-2' },
    { biot: 10, zeta: 1.4289, first: 1.262, source: 'CENGEL, Table 4-2' },
    { biot: 100, zeta: 1.5552, first: 1.2731, source: 'INCROPERA, Table 5.1' },
  ])('Bi $biot: $source', ({ biot, zeta, first }) => {
    const [mode] = slabSeries({ wallBiot: biot, surfaceBiot: 0 }, 1);
    // Half a unit of the last printed digit.
    expect(mode?.eigenvalue).toBeNear(zeta, { absolute: 5e-5 });
    expect(mode?.uniform).toBeNear(first, { absolute: 7e-5 });
  });

  test('Bi 1, Fo 1: 0.534 in the middle and 0.348 at the face (INCROPERA, Table 5.1, one term)', () => {
    const [mode] = slabSeries({ wallBiot: 1, surfaceBiot: 0 }, 1);
    const zeta = mode?.eigenvalue ?? Number.NaN;
    const middle = (mode?.uniform ?? Number.NaN) * Math.exp(-(zeta ** 2));
    // Three figures.
    expect(middle).toBeNear(0.534, { absolute: 5e-4 });
    expect(middle * Math.cos(zeta)).toBeNear(0.348, { absolute: 5e-4 });
  });

  test('the terms of a start profile of 1 add up to 1', () => {
    const sum = slabSeries({ wallBiot: 3, surfaceBiot: 0.5 }, 400).reduce(
      (total, mode) => total + mode.uniform * mode.mean,
      0,
    );
    // The remainder falls as one over the number of terms cubed for finite Biot numbers.
    expect(sum).toBeNear(1, { absolute: 1e-6 });
  });

  test('the terms of a start profile equal to the depth have a mean of one half', () => {
    const sum = slabSeries({ wallBiot: 3, surfaceBiot: 0.5 }, 400).reduce(
      (total, mode) => total + mode.linear * mode.mean,
      0,
    );
    // As above.
    expect(sum).toBeNear(0.5, { absolute: 1e-6 });
  });
});

describe('layerCooling agrees with published slabs', () => {
  test('steel wall, 8 min of a step of 80 K: 43 °C at the insulated side (INCROPERA, Ex. 5.4, mirrored to cooling)', () => {
    const wall = layerCooling({
      thickness: 0.04,
      startTemperature: 60,
      moldTemperature: -20,
      airTemperature: -20,
      surfaceCoefficient: 0,
      wallCoefficient: 500,
      conductivity: 63.9,
      density: 7832,
      specificHeat: 434,
    });
    const mirrored = 40 - layerTemperature(wall, 'surface', 480);
    // The book rounds the eigenvalue to three figures.
    expect(mirrored).toBeNear(43, { absolute: 0.2 });
  });

  test('1 m slab with one face suddenly cold: 91.755 of 100 at the insulated side (GEANKOPLIS, Ex. 5.4-2, exact series)', () => {
    const slab = layerCooling({
      thickness: 1,
      startTemperature: 100,
      moldTemperature: 0,
      airTemperature: 0,
      surfaceCoefficient: 0,
      wallCoefficient: 1e9,
      conductivity: 20,
      density: 1000,
      specificHeat: 1000,
    });
    // Five figures; the wall's conductance is large, not infinite.
    expect(layerTemperature(slab, 'surface', 6000)).toBeNear(91.755, { absolute: 5e-4 });
  });

  test('early on a slab loses heat like a semi-infinite solid (INCROPERA, section 5.7)', () => {
    const slab = layerCooling({ ...LAYER, surfaceCoefficient: 0, wallCoefficient: 1e9 });
    const diffusivity = 0.15 / (1000 * 1900);
    const seconds = 4;
    const lost = (2 * Math.sqrt((diffusivity * seconds) / Math.PI)) / 0.003;
    const expected = 60 + 98 * (1 - lost);
    // At Fo 0.035 neither the far face nor the ninth term is felt beyond a few hundredths of a kelvin.
    expect(layerTemperature(slab, 'mean', seconds)).toBeNear(expected, { absolute: 0.02 });
  });
});

describe('layerCooling agrees with finite volumes of the same slab', () => {
  test.each([
    { given: LAYER, seconds: 20 },
    { given: LAYER, seconds: 90 },
    { given: { ...LAYER, thickness: 0.005, moldTemperature: 100 }, seconds: 120 },
    { given: { ...LAYER, surfaceCoefficient: 60, airTemperature: 20 }, seconds: 40 },
    { given: { ...LAYER, moldTemperature: 25 }, seconds: 45 },
  ])('$seconds s, row %#', ({ given, seconds }) => {
    const cooling = layerCooling(given);
    const { surface, mean } = steppedLayer(given, seconds, 60);
    // Sixty cells leave 0.03 K.
    expect(layerTemperature(cooling, 'surface', seconds)).toBeNear(surface, { absolute: 0.05 });
    expect(layerTemperature(cooling, 'mean', seconds)).toBeNear(mean, { absolute: 0.05 });
  });
});

describe('laws of a cooling layer', () => {
  test('settled, it passes on to the air what it takes from the wall', () => {
    fc.assert(
      fc.property(layers, (layer) => {
        const { settled } = layerCooling(layer);
        const toAir = layer.surfaceCoefficient * (settled.surface - layer.airTemperature);
        const wallSide = 2 * settled.mean - settled.surface;
        const fromWall = layer.wallCoefficient * (layer.moldTemperature - wallSide);
        // Rounding, of a small difference of temperatures times a large conductance.
        expect(fromWall).toBeNear(toAir, { absolute: 1e-7 });
      }),
    );
  });

  test('surface and mean only ever fall, and stay between start and settled', () => {
    fc.assert(
      fc.property(layers, fc.double({ min: 2, max: 900, noNaN: true }), (layer, seconds) => {
        const cooling = layerCooling(layer);
        const limit = (layer.thickness ** 2 * 0.02) / (0.15 / (1000 * 1900));
        fc.pre(seconds > limit);
        for (const place of ['surface', 'mean'] as const) {
          const now = layerTemperature(cooling, place, seconds);
          // Rounding only.
          expect(now).toBeLessThanOrEqual(layer.startTemperature + 1e-6);
          expect(now).toBeGreaterThanOrEqual(cooling.settled[place] - 1e-9);
          expect(layerTemperature(cooling, place, seconds * 1.1)).toBeLessThanOrEqual(now + 1e-9);
        }
      }),
    );
  });

  test('time to fall, then the temperature at that time, comes back', () => {
    fc.assert(
      fc.property(
        layers,
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        fc.constantFrom('surface' as const, 'mean' as const),
        (layer, share, place) => {
          const cooling = layerCooling(layer);
          const drop = layer.startTemperature - cooling.settled[place];
          const target = layer.startTemperature - share * drop;
          const fall = timeToFall(cooling, place, target);
          const seconds = fall.kind === 'seconds' ? fall.seconds : Number.NaN;
          // Before Fo 0.01 eight terms are too few for more than that it is soon.
          const soon = (0.01 * layer.thickness ** 2) / (0.15 / (1000 * 1900));
          const then = layerTemperature(cooling, place, Math.max(seconds, soon));
          if (seconds <= soon) expect(then).toBeLessThanOrEqual(target + 0.5);
          // The root's last digits.
          else expect(then).toBeNear(target, { absolute: 1e-6 });
        },
      ),
    );
  });

  test('with wall and surface resistance scaled along, twice the thickness takes four times as long', () => {
    fc.assert(
      fc.property(layers, (layer) => {
        const twice = {
          ...layer,
          thickness: 2 * layer.thickness,
          wallCoefficient: layer.wallCoefficient / 2,
          surfaceCoefficient: layer.surfaceCoefficient / 2,
        };
        const [thin, thick] = [layerCooling(layer), layerCooling(twice)];
        // Rounding only.
        expect(layerTemperature(thick, 'mean', 240)).toBeNear(layerTemperature(thin, 'mean', 60), {
          absolute: 1e-7,
        });
      }),
    );
  });

  test('a shape factor stretches every time by itself', () => {
    const groove = layerCooling({ ...LAYER, shapeFactor: 1.5 });
    const slab = layerCooling(LAYER);
    // Rounding only.
    expect(layerTemperature(groove, 'mean', 60)).toBeNear(layerTemperature(slab, 'mean', 40), {
      absolute: 1e-9,
    });
  });
});

describe('timeToFall at its ends', () => {
  const cooling = layerCooling(LAYER);
  test('from the start, never, and the start itself', () => {
    expect(timeToFall(cooling, 'mean', 158)).toEqual({ kind: 'from the start' });
    expect(timeToFall(cooling, 'mean', 170)).toEqual({ kind: 'from the start' });
    const settled = cooling.settled.surface;
    expect(timeToFall(cooling, 'surface', settled)).toEqual({ kind: 'never', settled });
    expect(layerTemperature(cooling, 'surface', 0)).toBe(158);
  });

  test('a hair below the start is a moment, not an error', () => {
    const fall = timeToFall(cooling, 'surface', 157.999);
    expect(fall.kind).toBe('seconds');
    // The surface of 3 mm feels the wall after some seconds, the air at once.
    expect(fall.kind === 'seconds' ? fall.seconds : Number.NaN).toBeLessThan(3);
  });
});

test('bad figures are named', () => {
  const bad = (change: Partial<LayerInMold>) =>
    errorText(() => layerCooling({ ...LAYER, ...change }));
  expect(bad({ thickness: 0 })).toBe('layer thickness must be greater than 0 m, got 0 m');
  expect(bad({ surfaceCoefficient: -1 })).toBe(
    'heat loss of the free surface must be at least 0 W/m²·K, got -1 W/m²·K',
  );
  expect(bad({ wallCoefficient: 0 })).toBe(
    'plastic to mold conductance must be greater than 0 W/m²·K, got 0 W/m²·K',
  );
  expect(bad({ shapeFactor: 0 })).toBe('shape factor must be greater than 0, got 0');
  expect(bad({ conductivity: 0 })).toBe('conductivity must be greater than 0 W/m·K, got 0 W/m·K');
  expect(bad({ density: 0 })).toBe('density must be greater than 0 kg/m³, got 0 kg/m³');
  expect(bad({ specificHeat: 0 })).toBe(
    'specific heat must be greater than 0 J/kg·K, got 0 J/kg·K',
  );
  expect(bad({ moldTemperature: 160 })).toBe(
    'pour temperature must be greater than mold temperature (160 °C), got 158 °C',
  );
  expect(bad({ airTemperature: 158 })).toBe(
    'pour temperature must be greater than air temperature (158 °C), got 158 °C',
  );
  expect(errorText(() => layerTemperature(layerCooling(LAYER), 'mean', -1))).toBe(
    'time since the pour must be at least 0 s, got -1 s',
  );
});

test('temperatures that are no numbers are named', () => {
  const bad = (change: Partial<LayerInMold>) =>
    errorText(() => layerCooling({ ...LAYER, ...change }));
  expect(bad({ startTemperature: Number.NaN })).toBe(
    'pour temperature must be a number (°C), got not a number',
  );
  expect(bad({ moldTemperature: Number.NaN })).toBe(
    'mold temperature must be a number (°C), got not a number',
  );
  expect(bad({ airTemperature: Number.NaN })).toBe(
    'air temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => timeToFall(layerCooling(LAYER), 'mean', Number.NaN))).toBe(
    'temperature to fall to must be a number (°C), got not a number',
  );
});
