import { describe, expect, test } from 'vitest';
import {
  followOf,
  type TimelineLayer,
} from '../../../shared/pictures/layerTimeline/layerTimeline.ts';
import { timelineSpan } from '../../../shared/pictures/layerTimeline/timelineSpan.ts';
import { TIMELINE } from '../pictureData.ts';

const LAYER: TimelineLayer = {
  name: '2 vein',
  run: { firstAt: 60, lastAt: 90, passTime: 34, stops: 0 },
  openTime: { kind: 'stays open' },
};
const WINDOW = { kind: 'between', earliest: 30, latest: 100 } as const;

describe('followOf', () => {
  test('without bands all of a window is sure', () => {
    expect(followOf({ ...LAYER, window: WINDOW })).toEqual({
      from: 30,
      to: 100,
      sure: { from: 30, to: 100 },
    });
  });

  test('bands widen the outer ends and narrow the sure part', () => {
    const bands = { open: {}, earliest: { low: 20, high: 45 }, latest: { low: 80, high: 150 } };
    expect(followOf({ ...LAYER, window: WINDOW, bands })).toEqual({
      from: 20,
      to: 150,
      sure: { from: 45, to: 80 },
    });
  });

  test('where the worst earliest is past the worst latest nothing is sure', () => {
    const bands = { open: {}, earliest: { low: 20, high: 90 }, latest: { low: 80, high: 150 } };
    expect(followOf({ ...LAYER, window: WINDOW, bands })).toEqual({ from: 20, to: 150 });
  });

  test('an earliest time that may never come leaves nothing sure', () => {
    const bands = { open: {}, earliest: { low: 20 }, latest: { low: 80, high: 150 } };
    expect(followOf({ ...LAYER, window: WINDOW, bands })).toEqual({ from: 20, to: 150 });
  });

  test('a window without an end stays open, sure up to the worst latest', () => {
    const window = { kind: 'from', earliest: 30 } as const;
    expect(followOf({ ...LAYER, window })).toEqual({ from: 30, sure: { from: 30 } });
    const bands = { open: {}, earliest: { low: 20, high: 45 }, latest: { low: 80 } };
    expect(followOf({ ...LAYER, window, bands })).toEqual({ from: 20, sure: { from: 45, to: 80 } });
  });

  test('no window, no time to follow', () => {
    const none = { kind: 'none', why: 'stays soft', because: 'it stays soft' } as const;
    expect(followOf({ ...LAYER, window: none })).toBeUndefined();
    expect(followOf(LAYER)).toBeUndefined();
  });
});

describe('timelineSpan', () => {
  /** Binary digits of a product. */
  const exact = { absolute: 1e-9 };

  test('reaches 12 % past the last pour', () => {
    expect(timelineSpan(TIMELINE)).toBeNear(250 * 1.12, exact);
  });

  test('reaches the ends of windows that are near, and leaves those that are far to an arrow', () => {
    const span = (latest: number) => {
      const above = { ...LAYER, window: { ...WINDOW, latest } };
      return timelineSpan({ kind: 'layer-timeline', layers: [LAYER, above] });
    };
    // The layer below is poured until 90 s.
    expect(span(60)).toBeNear(150 * 1.04, exact);
    expect(span(72)).toBeNear(162 * 1.04, exact);
    expect(span(73)).toBeNear(120 * 1.04, exact);
  });

  test('a single cavity still has some width', () => {
    const one = { ...LAYER, run: { firstAt: 0, lastAt: 0, passTime: 4, stops: 0 } };
    expect(timelineSpan({ kind: 'layer-timeline', layers: [one] })).toBeGreaterThan(10);
  });
});
