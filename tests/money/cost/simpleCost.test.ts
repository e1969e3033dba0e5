import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { simpleCost } from '../../../shared/money/cost/simpleCost.ts';
import { evenReal } from '../../evenReal.ts';
import { errorText } from '../../heat/errorText.ts';

const FACTS = {
  plastisol: 0.002,
  packSize: 0.004,
  packPrice: 62,
  supplies: 5,
  work: 10_800,
  laborRate: 22,
  other: 2,
  overheadShare: 0.15,
  pieces: 100,
  currency: 'USD',
} as const;

describe('simpleCost', () => {
  test('adds material, work, overhead and the rest', () => {
    // by hand: 62 / 2 + 5; 3 h x 22; 15 % of 102; and 2
    expect(simpleCost(FACTS)).toEqual({
      total: 119.3,
      perPiece: 1.193,
      material: 36,
      work: 66,
      overhead: 15.3,
    });
  });

  test('its parts add up to its total to the cent, and more of anything never costs less', () => {
    const amount = evenReal(0, 1000);
    fc.assert(
      fc.property(amount, amount, amount, amount, (supplies, other, packPrice, laborRate) => {
        const facts = { ...FACTS, supplies, other, packPrice, laborRate };
        const { total, material, work, overhead } = simpleCost(facts);
        const rest = Math.round(other * 100) / 100;
        expect(total).toBeNear(material + work + overhead + rest, { absolute: 0.011 }); // a cent of rounding in the rest
        expect(simpleCost({ ...facts, supplies: supplies + 1 }).total).toBeGreaterThan(total);
        expect(simpleCost({ ...facts, work: 10_860 }).total).toBeGreaterThanOrEqual(total);
      }),
    );
  });

  test.each([
    [{ packSize: 0 }, 'pack size must be greater than 0 m³, got 0 m³'],
    [{ pieces: 0 }, 'pieces must be at least 1, got 0'],
    [{ pieces: 1.5 }, 'pieces must be a whole number, got 1.5'],
    [{ laborRate: Number.NaN }, 'labor rate must be a number, got not a number'],
    [{ packPrice: -1 }, 'pack price must be at least 0, got -1'],
  ])('refuses %o', (change, expected) => {
    expect(errorText(() => simpleCost({ ...FACTS, ...change }))).toBe(expected);
  });
});
