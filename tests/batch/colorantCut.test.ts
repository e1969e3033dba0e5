import fc from 'fast-check';
import { expect, test } from 'vitest';
import { colorantCut } from '../../shared/batch/colorantCut.ts';
import { mixtureDensity } from '../../shared/material/mixtureDensity.ts';
import { errorText } from '../heat/errorText.ts';

const HALF_ML = Object.freeze({
  parts: 10,
  volume: 5e-6,
  colorantDensity: 1200,
  thinnerDensity: 980,
});

test('5 mL of a cut 1 in 10 are 0.5 mL colorant and 4.5 mL softener', () => {
  const cut = colorantCut(HALF_ML);
  // by hand; last digits of a double
  expect(cut.colorantVolume).toBeNear(5e-7, { relative: 1e-12 });
  expect(cut.thinnerVolume).toBeNear(4.5e-6, { relative: 1e-12 });
  expect(cut.colorantMass).toBeNear(6e-4, { relative: 1e-12 });
  expect(cut.thinnerMass).toBeNear(4.41e-3, { relative: 1e-12 });
  expect(cut.density).toBeNear(1002, { relative: 1e-12 });
});

test('a cut has the density of its mixture, and as many drops of it carry the colorant of one', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1.1, max: 200, noNaN: true }),
      fc.double({ min: 950, max: 2000, noNaN: true }),
      (parts, colorantDensity) => {
        const cut = colorantCut({ ...HALF_ML, parts, colorantDensity });
        const mixture = mixtureDensity([
          { mass: cut.colorantMass, density: colorantDensity },
          { mass: cut.thinnerMass, density: HALF_ML.thinnerDensity },
        ]);
        // last digits of a double
        expect(cut.density).toBeNear(mixture, { relative: 1e-12 });
        const drop = 4e-8;
        const carried = parts * drop * (cut.colorantMass / HALF_ML.volume);
        expect(carried).toBeNear(drop * colorantDensity, { relative: 1e-12 });
      },
    ),
  );
});

test('colorantCut refuses a cut that is none', () => {
  expect(errorText(() => colorantCut({ ...HALF_ML, parts: 1 }))).toBe(
    'parts must be greater than 1, got 1',
  );
  expect(errorText(() => colorantCut({ ...HALF_ML, volume: 0 }))).toBe(
    'cut colorant must be greater than 0 m³, got 0 m³',
  );
});
