import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTimers } from '../../../shared/day/timers/readTimers.ts';
import { timerChoices } from '../../../shared/day/timers/timerChoices.ts';
import { timerState, timerText } from '../../../shared/day/timers/timerState.ts';
import type { RunningTimer } from '../../../shared/day/timers/timerTypes.ts';
import { evenReal } from '../../evenReal.ts';
import { FACTS } from '../checklist/dayData.ts';

const RUN = { ...FACTS, cupTime: 125.7, coolTime: 2400.2 };

function choice(key: string) {
  const found = timerChoices(RUN).find((one) => one.key === key);
  if (!found) throw new Error(`no timer ${key}`);
  return found;
}

function running(key: string): RunningTimer {
  return { ...choice(key), id: 'a', order: '2101', startedAt: 1_000_000 };
}

/** So many seconds after its start. */
function at(key: string, seconds: number) {
  return timerState(running(key), 1_000_000 + seconds * 1000);
}

describe('timerChoices', () => {
  test('are those of a round in sequence, with the times of the plan rounded to the safe side', () => {
    expect(timerChoices(RUN)).toEqual([
      {
        key: 'plate',
        label: 'Long griddle on, mold on it',
        cues: [
          {
            kind: 'ready',
            after: 1800,
            text: 'Read every mold top: pour at 214 °F or more, not by this clock',
          },
        ],
      },
      {
        key: 'cup',
        label: 'Cup cooked, pouring begins',
        cues: [
          {
            kind: 'too cool',
            after: 125,
            text: 'Read the cup: below 302 °F it goes back to heat',
          },
        ],
      },
      {
        key: 'layer 1',
        label: 'First cavity of belly poured',
        cues: [
          { kind: 'earliest', after: 150, text: 'Pour back as soon as the skin is firm' },
          // 400 s, less the 10 s that the last cavity waits longer than the first.
          { kind: 'latest', after: 390, text: 'Too late for back: it may peel' },
        ],
      },
      {
        key: 'cool',
        label: 'Molds off the plate',
        cues: [{ kind: 'ready', after: 2401, text: 'Read the mold: demold below 109 °F' }],
      },
    ]);
  });

  test('a plate that cannot heat the mold and a layer that can never follow have none', () => {
    const [belly, back] = RUN.layers;
    if (!belly || !back) throw new Error('two layers');
    const none = { kind: 'none', why: 'stays soft', because: 'it stays soft' } as const;
    const keys = timerChoices({
      ...RUN,
      plate: { kind: 'unreachable', because: 'too little heat' },
      layers: [belly, { ...back, window: none }],
    }).map(({ key }) => key);
    expect(keys).toEqual(['cup', 'cool']);
  });
});

describe('timerState', () => {
  test.each([
    ['layer 1', 0, 'waiting', 150, 'Too early: the layer below is still soft', 'to go'],
    ['layer 1', 149, 'waiting', 1, 'Too early: the layer below is still soft', 'to go'],
    ['layer 1', 150, 'go', 240, 'Pour back as soon as the skin is firm', 'left'],
    ['layer 1', 375, 'soon', 15, 'Pour back as soon as the skin is firm', 'left, last call'],
    ['layer 1', 390, 'over', 0, 'Too late for back: it may peel', 'over'],
    ['layer 1', 450, 'over', 60, 'Too late for back: it may peel', 'over'],
    ['cup', 10, 'go', 115, 'Hot enough to pour', 'left'],
    ['cup', 120, 'soon', 5, 'Read the cup: below 302 °F it goes back to heat', 'left, last call'],
    ['cup', 125, 'over', 0, 'Read the cup: below 302 °F it goes back to heat', 'over'],
    ['plate', 60, 'waiting', 1740, 'Heat is never left alone', 'to go'],
    [
      'plate',
      1830,
      'go',
      30,
      'Read every mold top: pour at 214 °F or more, not by this clock',
      'ready since',
    ],
  ] as const)('%s after %d s: %s', (key, seconds, phase, left, text, said) => {
    const state = at(key, seconds);
    expect(state).toMatchObject({ phase, seconds: left, text });
    expect(timerText(state)).toBe(said);
  });

  test('never goes back: early, then good, then late, whatever the clock shows', () => {
    const order = ['waiting', 'go', 'soon', 'over'];
    const second = evenReal(-100, 5000);
    fc.assert(
      fc.property(
        fc.constantFrom('plate', 'cup', 'layer 1', 'cool'),
        second,
        second,
        (key, a, b) => {
          const [one, other] = [at(key, Math.min(a, b)), at(key, Math.max(a, b))];
          expect(order.indexOf(one.phase)).toBeLessThanOrEqual(order.indexOf(other.phase));
          expect(one.seconds).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe('readTimers', () => {
  const kept = running('cup');

  test('gives back what was kept', () => {
    expect(readTimers(JSON.stringify([kept]), 1_000_000)).toEqual([kept]);
    expect(readTimers(null, 0)).toEqual([]);
    expect(readTimers('', 0)).toEqual([]);
  });

  test('leaves out those of yesterday and what is no timer', () => {
    const odd = [null, 7, {}, { ...kept, cues: 'none' }, { ...kept, cues: [{ kind: 'bell' }] }];
    expect(readTimers(JSON.stringify([...odd, kept]), 1_000_000)).toEqual([kept]);
    expect(readTimers(JSON.stringify([kept]), 1_000_000 + 24 * 3_600_000)).toEqual([]);
    expect(readTimers('{}', 0)).toEqual([]);
  });
});
