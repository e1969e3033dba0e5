import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavityShapeFactor } from '../../shared/heat/cavityShapeFactor.ts';
import { findRoot } from '../../shared/heat/findRoot.ts';
import { openTime } from '../../shared/heat/openTime.ts';
import { errorText } from './errorText.ts';

const DIFFUSIVITY = 0.15 / (1000 * 1900);
const SET = 92;

/** Seconds of a cavity of `thickness` [m] by volume over wetted area, 158 °C into a mold at `mold`. */
function seconds(
  thickness: number,
  mold: number,
  shapeFactor: number,
  more: object = {},
  set = SET,
): number {
  const layer = { thickness, startTemperature: 158, moldTemperature: mold, shapeFactor, ...more };
  const open = openTime(layer, set);
  return open.kind === 'seconds' ? open.seconds : Number.NaN;
}

/** Neither contact nor surface loss, as the handbooks' series have it. */
const BARE = { wallCoefficient: 1e9, surfaceCoefficient: 0 };

/** Share of its excess that the mean of a plane wall keeps, both faces cold, `half` its half thickness [m]. */
function wallShare(half: number, time: number): number {
  return [1, 3, 5, 7, 9, 11, 13, 15, 17].reduce((sum, odd) => {
    const rate = ((odd * Math.PI) / 2 / half) ** 2 * DIFFUSIVITY;
    return sum + (8 / (odd * Math.PI) ** 2) * Math.exp(-rate * time);
  }, 0);
}

/** The same of a round bar: zeros of J0 (INCROPERA, appendix B.4 and section 5.6). */
function barShare(radius: number, time: number): number {
  return [2.4048, 5.5201, 8.6537, 11.7915, 14.9309].reduce(
    (sum, zero) => sum + (4 / zero ** 2) * Math.exp(-((zero / radius) ** 2) * DIFFUSIVITY * time),
    0,
  );
}

function fallTime(share: (time: number) => number, mold: number): number {
  return findRoot((time) => share(time) - (SET - mold) / (158 - mold), 0.5, 3000);
}

describe('cavityShapeFactor brings volume over wetted area to the time of the cavity itself', () => {
  test.each([
    { width: 4, depth: 3, expected: [9, 12, 16] },
    { width: 6, depth: 4, expected: [17, 22, 30] },
    { width: 8, depth: 5, expected: [28, 35, 47] },
  ])('open groove $width x $depth mm in molds at 49, 60, 71 °C (HEATSTUDY)', (row) => {
    const { width, depth, expected } = row;
    const factor = cavityShapeFactor('box', (2 * depth) / width);
    [49, 60, 71].forEach((mold, index) => {
      const thickness = (width * depth) / (width + 2 * depth) / 1000;
      const reference = expected[index] ?? Number.NaN;
      // Whole seconds, and one factor for all molds.
      expect(seconds(thickness, mold, factor)).toBeNear(reference, {
        absolute: 0.5 + 0.07 * reference,
      });
    });
  });

  test('per square of volume over wetted area: 7.6 s/mm2 for 4 x 3 mm, 6.7 for 10 x 5, 4.7 for 40 mm wide (HEATSTUDY, set at 95 °C)', () => {
    const perSquare = (width: number, depth: number) => {
      const thickness = (width * depth) / (width + 2 * depth);
      const factor = cavityShapeFactor('box', (2 * depth) / width);
      return seconds(thickness / 1000, 60, factor, {}, 95) / thickness ** 2;
    };
    // Two figures, one factor; the study does not say how deep the wide one is, so 5 mm is taken.
    expect(perSquare(4, 3)).toBeNear(7.6, { relative: 0.08 });
    expect(perSquare(10, 5)).toBeNear(6.7, { relative: 0.08 });
    expect(perSquare(40, 5)).toBeNear(4.7, { relative: 0.08 });
  });

  test('rectangular bars of any aspect, as products of plane walls (INCROPERA, section 5.8)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.03, max: 30, noNaN: true }),
        fc.constantFrom(49, 60, 71),
        (aspect, mold) => {
          const width = 0.006 * Math.max(1, 1 / aspect);
          const depth = width * aspect;
          const exact = fallTime(
            (time) => wallShare(width / 2, time) * wallShare(depth / 2, time),
            mold,
          );
          const thickness = (width * depth) / (2 * (width + depth));
          const found = seconds(thickness, mold, cavityShapeFactor('box', aspect), BARE);
          // By its docstring.
          expect(found).toBeNear(exact, { relative: 0.1 });
        },
      ),
    );
  });

  test.each([{ mold: 49 }, { mold: 60 }, { mold: 71 }])(
    'a round bar, and a V whose mirror image makes a square bar, at $mold °C',
    ({ mold }) => {
      const bar = fallTime((time) => barShare(0.004, time), mold);
      // By its docstring.
      const within = { relative: 0.1 };
      expect(seconds(0.002, mold, cavityShapeFactor('ellipse', 1), BARE)).toBeNear(bar, within);
      expect(seconds(0.002, mold, cavityShapeFactor('half-round', 1), BARE)).toBeNear(bar, within);
      const square = fallTime((time) => wallShare(0.004, time) ** 2, mold);
      expect(seconds(0.002, mold, cavityShapeFactor('V', 1), BARE)).toBeNear(square, within);
    },
  );
});

describe('laws of the shape factor', () => {
  const aspects = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
  const profiles = fc.constantFrom('box' as const, 'half-round' as const, 'ellipse' as const);

  test('a section lying and standing are one, none beyond a square box', () => {
    fc.assert(
      fc.property(aspects, profiles, (aspect, profile) => {
        const factor = cavityShapeFactor(profile, aspect);
        // Rounding only.
        expect(cavityShapeFactor(profile, 1 / aspect)).toBeNear(factor, { relative: 1e-12 });
        expect(factor).toBeGreaterThan(1);
        expect(factor).toBeLessThanOrEqual(cavityShapeFactor('box', 1));
      }),
    );
  });

  test('a wide slab is a slab', () => {
    // By its formula, 2 r times a number below 1.
    for (const profile of ['box', 'half-round', 'ellipse'] as const)
      expect(cavityShapeFactor(profile, 1e-4)).toBeNear(1, { absolute: 2e-4 });
  });

  test('the docstring’s figures are those of the function', () => {
    const times = (wide: number) => cavityShapeFactor('box', 2 / wide);
    // Two decimals printed.
    expect(times(20)).toBeNear(1.11, { absolute: 0.005 });
    expect(times(8)).toBeNear(1.26, { absolute: 0.005 });
    expect(times(4)).toBeNear(1.45, { absolute: 0.005 });
    expect(times(1.5)).toBeNear(1.54, { absolute: 0.005 });
  });
});

test('an aspect of nothing is named', () => {
  expect(errorText(() => cavityShapeFactor('box', 0))).toBe(
    'aspect of the cavity must be greater than 0, got 0',
  );
});
