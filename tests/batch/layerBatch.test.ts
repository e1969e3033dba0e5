import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavityVolume } from '../../shared/batch/cavityVolume.ts';
import { type LayerWanted, layerBatch } from '../../shared/batch/layerBatch.ts';
import { pigmentCover } from '../../shared/batch/pigmentCover.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

const PLAIN: LayerWanted = Object.freeze({
  pieces: 10,
  cavityVolume: 1e-5,
  share: 0.5,
  density: 1000,
  overpour: 0,
  cupLoss: 0,
  colorCheck: 0,
  cupFill: 1e-4,
  expansion: 0,
  temperatureRise: 0,
});

describe('layerBatch', () => {
  test('with nothing lost is pieces x volume x share', () => {
    expect(layerBatch(PLAIN)).toEqual({
      cups: 1,
      cupMass: 0.05,
      cupVolume: 5e-5,
      cupHotVolume: 5e-5,
      totalMass: 0.05,
      totalVolume: 5e-5,
    });
  });

  test('a cup that just fits stays one cup', () => {
    expect(layerBatch({ ...PLAIN, pieces: 20 }).cups).toBe(1);
    expect(layerBatch({ ...PLAIN, pieces: 21 }).cups).toBe(2);
  });

  test('rounding in the last digits does not ask for one more cup', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.double({ min: 1e-6, max: 5e-5, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (pieces, cavityVolume, cups) => {
          const layer = { ...PLAIN, pieces, cavityVolume, density: 1040, overpour: 0.05 };
          const volume = pieces * cavityVolume * layer.share * (1 + layer.overpour);
          expect(layerBatch({ ...layer, cupFill: volume / cups }).cups).toBe(cups);
        },
      ),
    );
  });

  test('swelling counts against the cup', () => {
    expect(layerBatch({ ...PLAIN, pieces: 19, expansion: 6.5e-4, temperatureRise: 142 }).cups).toBe(
      2,
    );
  });

  test('what stays in a cup swells too', () => {
    // by hand: hot 89.5 mL and 11 mL that stay are more than the 100 mL of a cup
    const hot = { expansion: 1e-3, temperatureRise: 100, cupLoss: 0.01 };
    const one = { ...PLAIN, ...hot, pieces: 1, share: 1 };
    expect(layerBatch({ ...one, cavityVolume: 8.95e-5 / 1.1 }).cups).toBe(2);
    expect(layerBatch({ ...one, cavityVolume: 8.85e-5 / 1.1 }).cups).toBe(1);
  });

  test('refuses a cup that its own loss fills', () => {
    expect(errorText(() => layerBatch({ ...PLAIN, cupLoss: 0.2 }))).toBe(
      'cup fill must be greater than what stays in a cup (0.0002 m³), got 0.0001 m³',
    );
  });

  const wanted = fc.record({
    pieces: fc.integer({ min: 1, max: 500 }),
    cavityVolume: fc.double({ min: 1e-6, max: 5e-5, noNaN: true }),
    share: fc.double({ min: 0.05, max: 1, noNaN: true }),
    density: fc.double({ min: 950, max: 1200, noNaN: true }),
    overpour: evenReal(0, 0.2),
    cupLoss: evenReal(0, 0.01),
    colorCheck: evenReal(0, 0.01),
    cupFill: fc.double({ min: 1e-4, max: 5e-4, noNaN: true }),
    expansion: evenReal(0, 8e-4),
    temperatureRise: evenReal(0, 160),
  });

  /** Layers of so many pieces that most take several cups. */
  const many = fc
    .tuple(wanted, fc.integer({ min: 100, max: 500 }), fc.integer({ min: 5, max: 50 }))
    .map(([layer, pieces, milliliters]) => ({
      ...layer,
      pieces,
      cavityVolume: milliliters * 1e-6,
    }));

  function neededMass(layer: Parameters<typeof layerBatch>[0]): number {
    const { pieces, cavityVolume: volume, share, density, overpour, colorCheck } = layer;
    return pieces * volume * share * density * (1 + overpour) + colorCheck;
  }

  test('mass is conserved, and no cup runs over', () => {
    fc.assert(
      fc.property(wanted, (layer) => {
        const batch = layerBatch(layer);
        const needed = neededMass(layer);
        expect(batch.totalMass).toBeNear(needed + batch.cups * layer.cupLoss, { relative: 1e-12 });
        expect(batch.totalVolume).toBeNear(batch.totalMass / layer.density, { relative: 1e-12 });
        expect(batch.cupHotVolume).toBeLessThanOrEqual(layer.cupFill * (1 + 1e-8));
      }),
    );
  });

  test('one cup fewer would run over', () => {
    fc.assert(
      fc.property(many, (layer) => {
        const batch = layerBatch(layer);
        fc.pre(batch.cups > 1);
        const fuller =
          ((neededMass(layer) / (batch.cups - 1) + layer.cupLoss) / layer.density) *
          (1 + layer.expansion * layer.temperatureRise);
        expect(fuller).toBeGreaterThan(layer.cupFill * (1 - 1e-8));
      }),
    );
  });
});

test('cavityVolume is mass over density', () => {
  expect(cavityVolume(0.0104, 1040)).toBeNear(1e-5, { relative: 1e-12 });
  expect(errorText(() => cavityVolume(0, 1040))).toBe(
    'piece weight must be greater than 0 kg, got 0 kg',
  );
});

test('pigmentCover: 1 % in 3 mm of 1 g/mL is 30 g/m²', () => {
  expect(pigmentCover(0.01, 0.003, 1000)).toBeNear(0.03, { relative: 1e-12 });
});
