import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bondWindow, surfaceNeeded } from '../../shared/heat/bondWindow.ts';
import { layerContactTemperature } from '../../shared/heat/contactTemperature.ts';
import { layerCooling, layerTemperature } from '../../shared/heat/layerCooling.ts';
import type { LayerInMold } from '../../shared/heat/layerInMold.ts';
import { errorText } from './errorText.ts';

function slab(millimeters: number, moldTemperature: number): LayerInMold {
  return { thickness: millimeters / 1000, startTemperature: 158, moldTemperature };
}

const NEXT = { pourTemperature: 158 };

describe('surfaceNeeded is 2 T_bond - T_pour (HEATSTUDY)', () => {
  test.each([
    { pourTemperature: 145, expected: 87 },
    { pourTemperature: 150, expected: 82 },
    { pourTemperature: 155, expected: 77 },
    { pourTemperature: 160, expected: 72 },
    { pourTemperature: 165, expected: 67 },
    { pourTemperature: 170, expected: 62 },
  ])('$pourTemperature °C pour: $expected °C', ({ pourTemperature, expected }) => {
    expect(surfaceNeeded({ pourTemperature })).toBe(expected);
  });
});

describe('latest next pour agrees with an implicit solution (HEATSTUDY)', () => {
  test.each([
    { millimeters: 2, mold: 60, least: 33, most: 43 },
    { millimeters: 3, mold: 60, least: 65, most: 85 },
    { millimeters: 5, mold: 60, least: 149, most: 191 },
    { millimeters: 3, mold: 25, least: 46, most: 55 },
  ])('$millimeters mm in a mold at $mold °C: $least to $most s', (row) => {
    const { latest } = bondWindow(slab(row.millimeters, row.mold), NEXT);
    const seconds = latest.kind === 'seconds' ? latest.seconds : Number.NaN;
    // The study prints the range over its pours; the default pour lies inside.
    expect(seconds).toBeGreaterThanOrEqual(row.least);
    expect(seconds).toBeLessThanOrEqual(row.most);
  });

  test('3 mm in a mold at 85 °C: from 120 s for a cool pour to any time', () => {
    const cool = bondWindow(slab(3, 85), { pourTemperature: 150 }).latest;
    // The study prints the low end of a range of pours as 120 s.
    expect(cool.kind === 'seconds' ? cool.seconds : Number.NaN).toBeNear(120, { relative: 0.1 });
    expect(bondWindow(slab(3, 85), NEXT).latest).toEqual({ kind: 'any time' });
  });
});

describe('settled surface of thick stacks on a 100 °C mold (HEATSTUDY)', () => {
  test.each([
    { millimeters: 3, normal: 88, drafty: 80 },
    { millimeters: 6, normal: 80, drafty: 68 },
    { millimeters: 9, normal: 74, drafty: 61 },
    { millimeters: 12, normal: 70, drafty: 56 },
  ])('$millimeters mm', ({ millimeters, normal, drafty }) => {
    const layer = slab(millimeters, 100);
    const draft = { ...layer, surfaceCoefficient: 17.5, airTemperature: 22 };
    // Whole degrees; the study's drafty loss varies with temperature, which leaves 2 K.
    expect(bondWindow(layer, NEXT).settledSurface).toBeNear(normal, { absolute: 0.6 });
    expect(bondWindow(draft, NEXT).settledSurface).toBeNear(drafty, { absolute: 2 });
  });
});

describe('laws of the window', () => {
  const layers = fc.tuple(
    fc.double({ min: 1, max: 9, noNaN: true }),
    fc.double({ min: 25, max: 115, noNaN: true }),
  );

  test('at the latest moment the contact is exactly at the bond temperature, at the earliest the surface is firm', () => {
    fc.assert(
      fc.property(layers, fc.double({ min: 140, max: 175, noNaN: true }), (given, pour) => {
        const layer = slab(...given);
        const cooling = layerCooling(layer);
        const next = { pourTemperature: pour, bondTemperature: 116, firmTemperature: 110 };
        const { latest, earliest } = bondWindow(layer, next);
        if (latest.kind === 'seconds') {
          const surface = layerTemperature(cooling, 'surface', latest.seconds);
          // The root’s last digits.
          expect(layerContactTemperature(surface, pour)).toBeNear(116, { absolute: 1e-6 });
        } else {
          expect(latest.kind).toBe('any time');
          expect(cooling.settled.surface).toBeGreaterThanOrEqual(232 - pour);
        }
        if (earliest.kind === 'seconds') {
          const surface = layerTemperature(cooling, 'surface', earliest.seconds);
          // The root’s last digits.
          expect(surface).toBeNear(110, { absolute: 1e-6 });
        } else {
          expect(earliest.kind).toBe('never firm');
          expect(cooling.settled.surface).toBeGreaterThanOrEqual(110);
        }
      }),
    );
  });

  test('a hotter pour never closes the window sooner', () => {
    fc.assert(
      fc.property(layers, (given) => {
        const time = (pourTemperature: number) => {
          const { latest } = bondWindow(slab(...given), { pourTemperature });
          return latest.kind === 'seconds' ? latest.seconds : Number.POSITIVE_INFINITY;
        };
        expect(time(165)).toBeGreaterThanOrEqual(time(158));
      }),
    );
  });
});

describe('every verdict', () => {
  test.each([
    { name: 'open', layer: slab(3, 60), next: NEXT },
    { name: 'open', layer: slab(3, 100), next: NEXT },
    { name: 'open', layer: slab(3, 60), next: { ...NEXT, firmTemperature: 170 } },
    { name: 'closes before firm', layer: slab(3, 60), next: { pourTemperature: 120 } },
    { name: 'never firm', layer: slab(1, 130), next: NEXT },
    { name: 'too late from the start', layer: slab(3, 60), next: { pourTemperature: 70 } },
  ])('$name, row %#', ({ name, layer, next }) => {
    expect(bondWindow(layer, next).verdict).toBe(name);
  });

  test('a firm temperature above the pour is firm at once', () => {
    const { earliest } = bondWindow(slab(3, 60), { ...NEXT, firmTemperature: 170 });
    expect(earliest).toEqual({ kind: 'at once' });
  });

  test('a pour too cold for any surface is too late from the start', () => {
    const { latest } = bondWindow(slab(3, 60), { pourTemperature: 74 });
    expect(latest).toEqual({ kind: 'too late from the start' });
  });
});

test('bad figures are named', () => {
  expect(errorText(() => bondWindow(slab(3, 60), { pourTemperature: Number.NaN }))).toBe(
    'next pour temperature must be a number (°C), got not a number',
  );
  const next = { ...NEXT, bondTemperature: Number.POSITIVE_INFINITY };
  expect(errorText(() => bondWindow(slab(3, 60), next))).toBe(
    'bond temperature must be a number (°C), got infinity',
  );
  expect(errorText(() => bondWindow(slab(3, 60), { ...NEXT, firmTemperature: Number.NaN }))).toBe(
    'firm temperature must be a number (°C), got not a number',
  );
});
