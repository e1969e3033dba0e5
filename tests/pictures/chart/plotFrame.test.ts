import { describe, expect, test } from 'vitest';
import { inUnit, niceAxis, plotFrame } from '../../../shared/pictures/chart/plotFrame.ts';

describe('niceAxis', () => {
  const looks = { title: '', room: 200, along: 'down', narrowest: 1 } as const;

  test('is widened to whole ticks and says as many places as its step has', () => {
    const axis = niceAxis([0.02, 0.13], { ...looks, narrowest: 0.01 });
    expect(axis.domain).toEqual([0.02, 0.14]);
    expect(axis.ticks.map(axis.tickText)).toEqual([
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

test('plotFrame: the scales take values as the picture holds them, the ticks are in the unit of the axis', () => {
  const looks = { room: 200, narrowest: 1, title: '' };
  const minutes = niceAxis([0, 600], { ...looks, of: inUnit('min'), along: 'across' });
  const degrees = niceAxis([0, 100], { ...looks, of: inUnit('degF'), along: 'down' });
  expect(minutes.domain).toEqual([0, 10]);
  expect(degrees.domain[0]).toBeLessThanOrEqual(32);
  expect(degrees.domain[1]).toBeGreaterThanOrEqual(212);
  const edges = { left: 50, right: 250, top: 10, bottom: 210 };
  const { x, y } = plotFrame(edges, minutes, degrees);
  expect([x(0), x(300), x(600)]).toEqual([50, 150, 250]);
  const [low, high] = degrees.domain;
  expect(y(100)).toBeCloseTo(210 - (200 * (212 - low)) / (high - low), 9);
});
