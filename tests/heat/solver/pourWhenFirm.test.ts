import { describe, expect, test } from 'vitest';
import { bondWindow } from '../../../shared/heat/bondWindow.ts';
import { pourWhenFirm } from '../../../shared/heat/solver/pourWhenFirm.ts';
import { readingAt } from '../../../shared/heat/solver/readingAt.ts';
import { solveLayers } from '../../../shared/heat/solver/solveLayers.ts';

const LAYER = { thickness: 0.003, temperature: 158 };

describe('pourWhenFirm', () => {
  test('the second layer lands when the series says that the first is firm', () => {
    const pours = pourWhenFirm([LAYER, LAYER], { mold: 60 });
    const layer = { thickness: 0.003, startTemperature: 158, moldTemperature: 60 };
    const { earliest } = bondWindow(layer, { pourTemperature: 158 });
    const firm = earliest.kind === 'seconds' ? earliest.seconds : Number.NaN;
    // Grid and step leave 0.5 %.
    expect(pours[1]?.time ?? Number.NaN).toBeNear(firm, { relative: 5e-3 });
  });

  test('each lands at the earliest moment of the solved stack', () => {
    const pours = pourWhenFirm([LAYER, LAYER, { ...LAYER, thickness: 0.002 }, LAYER], { mold: 75 });
    const { layers } = solveLayers({ pours, mold: 75 });
    expect(layers).toHaveLength(4);
    layers.slice(0, -1).forEach(({ earliest }, index) => {
      const gap = (pours[index + 1]?.time ?? Number.NaN) - (pours[index]?.time ?? 0);
      // A step that ends at the pour moves the crossing a little.
      expect(earliest.kind === 'seconds' ? earliest.seconds : Number.NaN).toBeNear(gap, {
        absolute: 0.05,
      });
    });
  });

  test('it stops below the first layer that never gets firm', () => {
    expect(pourWhenFirm([LAYER, LAYER, LAYER], { mold: 140 })).toEqual([{ ...LAYER, time: 0 }]);
  });

  test('a layer that is firm at once is given a second', () => {
    const cold = { thickness: 0.003, temperature: 105 };
    expect(pourWhenFirm([cold, LAYER], { mold: 60 })[1]?.time).toBe(1);
  });
});

describe('readingAt', () => {
  const READINGS = [
    { time: 10, mean: 100, surface: 90 },
    { time: 20, mean: 80, surface: 70 },
    { time: 20, mean: 80, surface: 120 },
    { time: 40, mean: 60, surface: 60 },
  ];

  test('nothing before the pour and after the end, the reading itself at its time', () => {
    expect(readingAt(READINGS, 9)).toBeUndefined();
    expect(readingAt(READINGS, 41)).toBeUndefined();
    expect(readingAt([], 0)).toBeUndefined();
    expect(readingAt(READINGS, 10)).toEqual(READINGS[0]);
    expect(readingAt(READINGS, 40)).toEqual(READINGS[3]);
  });

  test('straight between, and just after a landing at its moment', () => {
    expect(readingAt(READINGS, 15)).toEqual({ time: 15, mean: 90, surface: 80 });
    expect(readingAt(READINGS, 20)).toEqual({ time: 20, mean: 80, surface: 120 });
    expect(readingAt(READINGS, 30)).toEqual({ time: 30, mean: 70, surface: 90 });
  });

  test('within a kelvin of the solution in fine steps', () => {
    const pours = [
      { ...LAYER, time: 0 },
      { ...LAYER, time: 50 },
    ];
    const coarse = solveLayers({ pours, mold: 60 });
    const fine = solveLayers({
      pours,
      mold: 60,
      resolution: { cellsPerLayer: 64, stepShare: 0.01 },
    });
    for (const time of [5, 20, 49, 55, 70, 120, 400])
      for (const layer of [0, 1]) {
        const [one, other] = [coarse, fine].map(({ layers }) =>
          readingAt(layers[layer]?.readings ?? [], time),
        );
        if (one === undefined && other === undefined) continue;
        expect(one?.mean ?? 0).toBeNear(other?.mean ?? 1e9, { absolute: 1 });
        expect(one?.surface ?? 0).toBeNear(other?.surface ?? 1e9, { absolute: 1 });
      }
  });
});
