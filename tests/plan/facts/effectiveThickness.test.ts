import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PROFILES } from '../../../shared/batch/fillShare.ts';
import {
  closedThickness,
  effectiveThickness,
  ellipsePerimeter,
} from '../../../shared/plan/facts/effectiveThickness.ts';

const size = fc.double({ min: 0.002, max: 0.05, noNaN: true });
const profile = fc.constantFrom(...PROFILES);

describe('effectiveThickness', () => {
  test.each([
    // 0.1 %: a box 4 m wide and 4 mm deep has 0.2 % more wall than bottom
    { profile: 'box' as const, width: 4, depth: 0.004, mark: 1, expected: 0.004, relative: 3e-3 },
    { profile: 'box' as const, width: 4, depth: 0.004, mark: 0.5, expected: 0.002, relative: 3e-3 },
    // geometry by hand: 10 x 5 mm groove, 50 mm2 over 20 mm
    {
      profile: 'box' as const,
      width: 0.01,
      depth: 0.005,
      mark: 1,
      expected: 0.0025,
      relative: 1e-12,
    },
    // 6-8-10 triangle: two sides of 5 mm around 12 mm2
    {
      profile: 'V' as const,
      width: 0.006,
      depth: 0.004,
      mark: 1,
      expected: 0.0012,
      relative: 1e-12,
    },
    // half circle of radius r: (pi r^2 / 2) / (pi r) = r / 2
    {
      profile: 'half-round' as const,
      width: 0.02,
      depth: 0.01,
      mark: 1,
      expected: 0.005,
      relative: 1e-9,
    },
    // full circle of radius r: r / 2
    {
      profile: 'ellipse' as const,
      width: 0.02,
      depth: 0.02,
      mark: 1,
      expected: 0.005,
      relative: 1e-9,
    },
    // lower half of a circle is the half circle again
    {
      profile: 'ellipse' as const,
      width: 0.02,
      depth: 0.02,
      mark: 0.5,
      expected: 0.005,
      relative: 1e-9,
    },
  ])(
    'a $profile $width m wide filled to $mark cools like $expected m',
    ({ expected, relative, mark, ...section }) => {
      expect(effectiveThickness(section, mark)).toBeNear(expected, { relative });
    },
  );

  test('a shallow fill tends to a thin film: never thicker than the plastic is high', () => {
    fc.assert(
      fc.property(
        profile,
        size,
        size,
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (kind, width, depth, mark) => {
          const thickness = effectiveThickness({ profile: kind, width, depth }, mark);
          expect(thickness).toBeGreaterThan(0);
          expect(thickness).toBeLessThanOrEqual(mark * depth);
        },
      ),
    );
  });

  test('doubling every length doubles the thickness', () => {
    fc.assert(
      fc.property(
        profile,
        size,
        size,
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (kind, width, depth, mark) => {
          const once = effectiveThickness({ profile: kind, width, depth }, mark);
          const twice = effectiveThickness(
            { profile: kind, width: 2 * width, depth: 2 * depth },
            mark,
          );
          expect(twice).toBeNear(2 * once, { relative: 1e-9 }); // arithmetic only
        },
      ),
    );
  });

  test('refuses a mark above the cavity', () => {
    expect(() => effectiveThickness({ profile: 'box', width: 0.01, depth: 0.01 }, 1.2)).toThrow(
      'fill mark: at most',
    );
  });
});

describe('closedThickness', () => {
  test.each([
    { profile: 'box' as const, width: 4, depth: 0.004, expected: 0.002, relative: 2e-3 }, // both faces cool it; edges add 0.1 %
    { profile: 'ellipse' as const, width: 0.02, depth: 0.02, expected: 0.005, relative: 1e-12 }, // circle: r / 2
    // half circle: (pi r^2 / 2) / (2 r + pi r), r = 10 mm
    {
      profile: 'half-round' as const,
      width: 0.02,
      depth: 0.01,
      expected: (Math.PI * 0.005) / (2 + Math.PI),
      relative: 1e-12,
    },
    // 3-4-5 halves: 12 mm2 over 6 + 5 + 5 mm
    { profile: 'V' as const, width: 0.006, depth: 0.004, expected: 0.00075, relative: 1e-12 },
  ])(
    'a closed $profile $width m wide cools like $expected m',
    ({ expected, relative, ...section }) => {
      expect(closedThickness(section)).toBeNear(expected, { relative });
    },
  );

  test('metal all around always cools faster than the same section open at the top', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('box' as const, 'V' as const, 'half-round' as const),
        size,
        size,
        (kind, width, depth) => {
          const section = { profile: kind, width, depth };
          expect(closedThickness(section)).toBeLessThan(effectiveThickness(section, 1));
        },
      ),
    );
  });

  test('an ellipse by Ramanujan and by the summed arc agree', () => {
    fc.assert(
      fc.property(size, size, (width, depth) => {
        const section = { profile: 'ellipse' as const, width, depth };
        // Ramanujan's own error at the flattest ratio tried, 1 : 25
        expect(closedThickness(section)).toBeNear(effectiveThickness(section, 1), {
          relative: 1e-3,
        });
      }),
    );
  });
});

test('ellipsePerimeter of a circle is its circumference and of a flat one nearly four half-widths', () => {
  expect(ellipsePerimeter(2, 2)).toBeNear(4 * Math.PI, { relative: 1e-12 }); // exact for a circle
  expect(ellipsePerimeter(1, 1e-9)).toBeNear(4, { relative: 5e-4 }); // the known worst case of the formula, 0.04 %
});
