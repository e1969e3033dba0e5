import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockTicks } from '../../../shared/pictures/chart/clockTicks.ts';
import { fitText, textWidth } from '../../../shared/pictures/chart/fitText.ts';
import { hatched } from '../../../shared/pictures/chart/hatched.ts';
import { linearScale } from '../../../shared/pictures/chart/linearScale.ts';
import { niceAxis } from '../../../shared/pictures/chart/plotFrame.ts';
import { spread } from '../../../shared/pictures/chart/spread.ts';
import { evenReal } from '../../evenReal.ts';

describe('spread', () => {
  test('leaves places that are far enough apart', () => {
    expect(spread([40, 10], 12, [0, 100])).toEqual([40, 10]);
  });

  test('moves what is too near, in order, and keeps it between the ends', () => {
    expect(spread([96, 94, 95], 10, [0, 100])).toEqual([100, 80, 90]);
  });

  test('keeps gap, order and ends for any places', () => {
    const places = fc.array(evenReal(0, 300), { maxLength: 8 });
    fc.assert(
      fc.property(places, (wanted) => {
        const placed = spread(Object.freeze(wanted), 16, [0, 300]);
        const sorted = [...placed].sort((one, other) => one - other);
        for (const [rank, place] of sorted.entries()) {
          expect(place).toBeGreaterThanOrEqual(-1e-9);
          expect(place).toBeLessThanOrEqual(300 + 1e-9);
          if (rank > 0) expect(place - (sorted[rank - 1] ?? 0)).toBeGreaterThanOrEqual(16 - 1e-9);
        }
      }),
    );
  });

  test('stands evenly where there is no room for the gap', () => {
    expect(spread([5, 5, 5], 50, [0, 60])).toEqual([0, 30, 60]);
  });
});

describe('fitText', () => {
  test('leaves what fits and cuts what does not with an ellipsis, never wider than the room', () => {
    expect(fitText('belly', 60, 12)).toBe('belly');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        expect(textWidth(fitText(text, 80, 12), 12)).toBeLessThanOrEqual(80);
      }),
    );
  });
});

describe('clockTicks', () => {
  test.each([
    { end: 100, most: 6, expected: [0, 30, 60, 90] },
    { end: 250, most: 10, expected: [0, 30, 60, 90, 120, 150, 180, 210, 240] },
    { end: 1000, most: 5, expected: [0, 300, 600, 900] },
  ])('over $end s people count $expected', ({ end, most, expected }) => {
    expect(clockTicks(end, most)).toEqual(expected);
  });
});

describe('niceAxis', () => {
  const looks = { title: '', room: 200, along: 'down', narrowest: 1 } as const;

  test('is widened to whole ticks and says as many places as its step has', () => {
    const axis = niceAxis([0.02, 0.13], { ...looks, narrowest: 0.01 });
    expect(axis.domain).toEqual([0.02, 0.14]);
    expect(axis.ticks.map(axis.say)).toEqual([
      '0.02',
      '0.04',
      '0.06',
      '0.08',
      '0.10',
      '0.12',
      '0.14',
    ]);
  });

  test('one value has an axis of some width', () => {
    const { domain } = niceAxis([70], looks);
    expect(domain[1] - domain[0]).toBeGreaterThanOrEqual(1);
  });
});

test('linearScale: a domain of one value stands in the middle', () => {
  expect(linearScale([3, 3], [0, 100])(3)).toBe(50);
  expect(linearScale([0, 10], [100, 0])(2.5)).toBe(75);
});

test('hatched: every line runs from edge to edge of its strip, and never beyond', () => {
  const coordinate = fc.integer({ min: 0, max: 600 });
  fc.assert(
    fc.property(coordinate, coordinate, fc.integer({ min: 0, max: 200 }), (left, lean, wide) => {
      const from = [
        [left, 10],
        [left + lean, 54],
      ] as const;
      const to = [
        [left + wide, 10],
        [left + lean + wide, 54],
      ] as const;
      const { d = '' } = hatched({ from, to }).attributes;
      // Coordinates are rounded to a tenth, and a slanted edge moves with that.
      const slack = 0.06 + (0.06 * lean) / 44;
      const edgeAt = (y: number) => left + (lean * (y - 10)) / 44;
      const isNear = (one: number, other: number) => Math.abs(one - other) <= slack;
      for (const [, ...found] of d.matchAll(/M([\d.]+),([\d.]+)L(-?[\d.]+),([\d.]+)/g)) {
        const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = found.map(Number);
        expect(x1 - edgeAt(y1)).toBeGreaterThanOrEqual(-slack);
        expect(x2 - edgeAt(y2)).toBeGreaterThanOrEqual(-slack);
        expect(x1 - edgeAt(y1)).toBeLessThanOrEqual(wide + slack);
        expect(x2 - edgeAt(y2)).toBeLessThanOrEqual(wide + slack);
        expect(isNear(y1, 10) || isNear(x1, edgeAt(y1) + wide)).toBe(true);
        expect(isNear(y2, 54) || isNear(x2, edgeAt(y2))).toBe(true);
      }
    }),
  );
});
