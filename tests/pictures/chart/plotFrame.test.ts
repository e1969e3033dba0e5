import { describe, expect, test } from 'vitest';
import { niceAxis } from '../../../shared/pictures/chart/plotFrame.ts';

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
