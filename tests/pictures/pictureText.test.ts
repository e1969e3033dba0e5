import { describe, expect, test } from 'vitest';
import type { HeatUp } from '../../shared/pictures/heatUp/heatUp.ts';
import type { TimelineLayer } from '../../shared/pictures/layerTimeline/layerTimeline.ts';
import { pictureText, pictureTitle } from '../../shared/pictures/pictureText.ts';
import { HEAT_UP, PROFILE, TIMELINE, TRIAL } from './pictureData.ts';

function layerText(layer: Omit<TimelineLayer, 'name'>): string {
  return pictureText({ kind: 'layer-timeline', layers: [{ name: '2 vein', ...layer }] });
}

const RUN = { firstAt: 70, lastAt: 130, passTime: 64, stops: 0 };

describe('pictureText', () => {
  test('a heat-up says target, bands, boiling point, first pour and readings', () => {
    expect(pictureText(HEAT_UP)).toBe(
      'With the plate set to 266 °F, the mold top reaches 213 °F in 19 min (13 to 29 min) from switch-on; it settles at 234 °F (221 to 247 °F). ' +
        'Water boils at 208 °F here; the first pour is 24 min after switch-on. Marks: 5 readings of T-1 and T-4.',
    );
  });

  test('a metric shop reads degrees Celsius', () => {
    expect(pictureText({ ...HEAT_UP, system: 'metric', readings: [] })).toBe(
      'With the plate set to 130 °C, the mold top reaches 101 °C in 19 min (13 to 29 min) from switch-on; it settles at 112 °C (105 to 119 °C). ' +
        'Water boils at 98 °C here; the first pour is 24 min after switch-on.',
    );
  });

  test('a mold that never gets hot enough says so, why, and where it ends', () => {
    const { target: _, ...rest } = HEAT_UP;
    const cool: HeatUp = { ...rest, readings: [], because: 'use a hotter plate' };
    expect(pictureText(cool)).toBe(
      'The mold top does not get hot enough: use a hotter plate. After 60 min it reads 233 °F.',
    );
  });

  test('a round says pour, window and open time of every layer, with their bands', () => {
    expect(pictureText(TIMELINE)).toBe(
      '1 belly: poured from 0:00 to 1:00 on the stopwatch; open for 48 s (30 to 80 s). ' +
        '2 line: poured from 1:10 to 2:10 on the stopwatch, 1 stop to heat the cup; may follow the layer below after 25 s (18 to 38 s) and until 1 min 50 s (85 s to 2 min 40 s); open for 20 s (15 to 30 s). ' +
        '3 back: poured from 3:10 to 4:10 on the stopwatch; may follow the layer below after 42 s (30 to 66 s), at any later time (at worst until 3 min 20 s); stays open.',
    );
  });

  test('a layer that has no window says why', () => {
    const none = { kind: 'none', why: 'too cool', because: 'even fresh it is too cool' } as const;
    expect(layerText({ run: RUN, openTime: { kind: 'stays open' }, window: none })).toBe(
      '2 vein: poured from 1:10 to 2:10 on the stopwatch; no time to follow, even fresh it is too cool; stays open.',
    );
  });

  test('a profile says each moment, the limits and every joint', () => {
    const [first] = PROFILE.profiles;
    expect(pictureText({ ...PROFILE, profiles: first ? [first] : [] })).toBe(
      'After 30 s: 212 °F at the mold, 300 °F at the hottest, 300 °F on top. ' +
        'The plastic sets below 198 °F; layers bond where they meet above 241 °F. ' +
        '2 line meets the layer below at 262 °F (246 to 277 °F) and bonds. ' +
        '3 back meets the layer below at 234 °F and is too cool to bond.',
    );
  });

  test('a trial says its readings, its curve and how far they are apart', () => {
    expect(pictureText(TRIAL)).toBe(
      'Round stick 5 in on Griddle A, set to 270 °F: 5 readings. The fitted curve reaches 228 °F after 30 min. ' +
        'Readings lie at most 4.1 °F off the curve. The mold top must read 213 °F.',
    );
    expect(pictureText({ ...TRIAL, curve: [], readings: [] })).toBe(
      'Round stick 5 in on Griddle A, set to 270 °F: 0 readings. The mold top must read 213 °F.',
    );
  });

  test('a trial is called by its mold and plate', () => {
    expect(pictureTitle(TRIAL)).toBe(TRIAL.title);
  });
});
