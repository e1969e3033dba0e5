import { describe, expect, test } from 'vitest';
import { layerThicknesses } from '../../../shared/heat/solver/layerThicknesses.ts';
import { solveLayers } from '../../../shared/heat/solver/solveLayers.ts';
import { grooveReference } from './grooveReference.ts';

const AIR = { airTemperature: 38, surfaceCoefficient: 12 };

function reference(width: number, depth: number, moldTemperature: number, until: number) {
  const groove = { ...AIR, width: width / 1000, depth: depth / 1000, moldTemperature };
  return grooveReference({ ...groove, startTemperature: 158 }, 16, until);
}

function slabOf(width: number, depth: number, mold: number, shapeFactor: number) {
  const volume = (width * depth) / 1e6;
  const [thickness = 0] = layerThicknesses([{ volume, wettedArea: (width + 2 * depth) / 1000 }]);
  const pours = [{ time: 0, thickness, temperature: 158 }];
  const [layer] = solveLayers({ pours, mold, shapeFactor }).layers;
  if (layer === undefined) throw new Error('one layer');
  return layer;
}

function seconds(time: { readonly kind: string; readonly seconds?: number }): number {
  return time.kind === 'seconds' ? (time.seconds ?? Number.NaN) : Number.NaN;
}

const GROOVES = [
  { width: 4, depth: 3, printed: [9, 12, 16] },
  { width: 6, depth: 4, printed: [17, 22, 30] },
  { width: 8, depth: 5, printed: [28, 35, 47] },
];

describe('grooves by volume over wetted area against two dimensions', () => {
  test.each(GROOVES)(
    '$width x $depth mm: the reference repeats the printed times (HEATSTUDY)',
    (row) => {
      [49, 60, 71].forEach((mold, index) => {
        const set = reference(row.width, row.depth, mold, 60).find(({ mean }) => mean < 92);
        // Whole seconds, and the step.
        expect(set?.time).toBeNear(row.printed[index] ?? Number.NaN, { absolute: 0.8 });
      });
    },
  );

  test.each(GROOVES)(
    '$width x $depth mm: open time within 8 % at a shape factor of 1.55',
    (row) => {
      for (const mold of [49, 60, 71]) {
        const set = reference(row.width, row.depth, mold, 60).find(({ mean }) => mean < 92);
        const { open } = slabOf(row.width, row.depth, mold, 1.55);
        // One factor for three grooves and three molds.
        expect(seconds(open)).toBeNear(set?.time ?? Number.NaN, { relative: 0.08 });
      }
    },
  );

  test('a groove ten times as wide as deep: within 3 % at 1.2', () => {
    const set = reference(40, 4, 60, 80).find(({ mean }) => mean < 92);
    expect(seconds(slabOf(40, 4, 60, 1.2).open)).toBeNear(set?.time ?? Number.NaN, {
      relative: 0.03,
    });
  });

  test.each(GROOVES)(
    'documented miss: $width x $depth mm closes its window 15 to 30 % early, the middle of a groove stays hot longest',
    (row) => {
      for (const mold of [49, 60, 71]) {
        const late = reference(row.width, row.depth, mold, 130).find(({ surface }) => surface < 74);
        const { latest } = slabOf(row.width, row.depth, mold, 1.55);
        const ratio = seconds(latest) / (late?.time ?? Number.NaN);
        expect(ratio).toBeGreaterThan(0.7);
        expect(ratio).toBeLessThan(0.85);
      }
    },
  );

  test.each([
    { width: 8, depth: 4 },
    { width: 8, depth: 5 },
    { width: 12, depth: 5 },
  ])('$width x $depth mm on a mold at boiling stays open, its mean within 2 K', (row) => {
    const settled = reference(row.width, row.depth, 100, 500).pop();
    const layer = slabOf(row.width, row.depth, 100, 1.55);
    const end = layer.readings[layer.readings.length - 1];
    expect(layer.open.kind).toBe('stays open');
    // The study prints 95 to 97 °C.
    expect(settled?.mean).toBeNear(96, { absolute: 1.1 });
    // The slab loses heat from its whole area, the groove from its opening only.
    expect(end?.mean).toBeNear(settled?.mean ?? Number.NaN, { absolute: 2 });
    // Documented miss: the middle of the groove is 2 to 4 K cooler than the slab.
    const excess = (end?.surface ?? Number.NaN) - (settled?.surface ?? Number.NaN);
    expect(excess).toBeNear(3, { absolute: 1 });
  });
});
