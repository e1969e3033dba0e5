import type { HeatUp } from '../../shared/pictures/heatUp/heatUp.ts';
import type { LayerProfile } from '../../shared/pictures/layerProfile/layerProfile.ts';
import type { LayerTimeline } from '../../shared/pictures/layerTimeline/layerTimeline.ts';
import type { Timetable } from '../../shared/pictures/timetable/timetable.ts';
import type { HeatTrialPictured } from '../../shared/trials/trialPictureTypes.ts';

const ROOM = 20;

/** A mold top that climbs toward `end` [degC], constructed: e-folding in 9 min. */
function climbing(seconds: number, end: number): number {
  return ROOM + (end - ROOM) * (1 - Math.exp(-seconds / 540));
}

const COURSE = Array.from({ length: 61 }, (_, index) => {
  const seconds = index * 60;
  return {
    seconds,
    plate: Math.min(130, ROOM + seconds * 0.23),
    top: climbing(seconds, 112),
    low: climbing(seconds, 105),
    high: climbing(seconds * 1.2, 119),
  };
});

/** Constructed, not solved: a griddle at 130 degC, 2,400 ft up. */
export const HEAT_UP: HeatUp = {
  kind: 'heat-up',
  system: 'US',
  course: COURSE,
  readings: [
    { trial: 'T-1', seconds: 300, top: 60 },
    { trial: 'T-1', seconds: 600, top: 82 },
    { trial: 'T-1', seconds: 1200, top: 103 },
    { trial: 'T-4', seconds: 480, top: 76 },
    { trial: 'T-4', seconds: 1500, top: 104 },
  ],
  target: {
    top: 100.5,
    boilingPoint: 97.6,
    setting: 130,
    seconds: 1123,
    band: { low: 830, high: 1710 },
    plateau: 112,
    plateauBand: { low: 105, high: 119 },
    firstPour: 1423,
    onAt: 516,
  },
};

/** Three layers over 16 cavities at 4 s. */
export const TIMELINE: LayerTimeline = {
  kind: 'layer-timeline',
  layers: [
    {
      name: '1 belly',
      run: { firstAt: 0, lastAt: 60, stops: 0, passTime: 60 },
      openTime: { kind: 'seconds', seconds: 48 },
      bands: { open: { low: 30, high: 80 } },
    },
    {
      name: '2 line',
      run: {
        firstAt: 70,
        lastAt: 130,
        stops: 1,
        passTime: 60,
        wait: { shortest: 70, longest: 70 },
      },
      openTime: { kind: 'seconds', seconds: 20 },
      window: { kind: 'between', earliest: 25, latest: 110 },
      bands: {
        open: { low: 15, high: 30 },
        earliest: { low: 18, high: 38 },
        latest: { low: 85, high: 160 },
      },
    },
    {
      name: '3 back',
      run: {
        firstAt: 190,
        lastAt: 250,
        stops: 0,
        passTime: 60,
        wait: { shortest: 120, longest: 120 },
      },
      openTime: { kind: 'stays open' },
      window: { kind: 'from', earliest: 42 },
      bands: { open: {}, earliest: { low: 30, high: 66 }, latest: { low: 200 } },
    },
  ],
};

const HEIGHTS = Array.from({ length: 13 }, (_, index) => index * 0.0005);

export const PROFILE: LayerProfile = {
  kind: 'layer-profile',
  system: 'US',
  names: ['1 belly', '2 line', '3 back'],
  jointHeights: [0.002, 0.003, 0.006],
  joints: [
    {
      name: '2 line',
      height: 0.002,
      contact: 128,
      band: { low: 119, high: 136 },
      verdict: 'bonds',
    },
    { name: '3 back', height: 0.003, contact: 112, verdict: 'peels' },
  ],
  setTemperature: 92,
  bondTemperature: 116,
  profiles: [30, 90, 180, 400].map((time) => ({
    time,
    heights: HEIGHTS,
    temperatures: HEIGHTS.map((height) => 100 + 60 * Math.exp(-time / 150) * (height / 0.006)),
  })),
};

export const TRIAL: HeatTrialPictured = {
  kind: 'heat-trial',
  title: 'Round stick 5 in on Griddle A, set to 270 °F',
  system: 'US',
  target: 100.5,
  curve: Array.from({ length: 31 }, (_, index) => ({
    seconds: index * 60,
    top: climbing(index * 60, 112),
  })),
  readings: HEAT_UP.readings,
};

const HOUR = 3600;
const NEXT = 24 * HOUR;

/** Two days of two people, one plate and one mold of which there are two; order 2103 is late. */
export const TIMETABLE: Timetable = {
  kind: 'timetable',
  title: 'Pour days Mon Nov 30 to Tue Dec 1',
  system: 'US',
  days: [
    { name: 'Mon Nov 30', from: 8 * HOUR, to: 17 * HOUR },
    { name: 'Tue Dec 1', from: NEXT + 8 * HOUR, to: NEXT + 12 * HOUR },
  ],
  groups: [
    {
      name: 'People',
      rows: [
        {
          name: 'Ada',
          bars: [
            { from: 8 * HOUR, to: 9 * HOUR, order: 0, text: 'weigh and color' },
            { from: 10 * HOUR, to: 10.5 * HOUR, order: 0, text: 'pour' },
            { from: NEXT + 9 * HOUR, to: NEXT + 11 * HOUR, order: 2, text: 'pack' },
          ],
        },
        { name: 'Ben', bars: [{ from: 13 * HOUR, to: 14 * HOUR, order: 1, text: 'pour' }] },
      ],
    },
    {
      name: 'Molds',
      rows: [
        {
          name: 'Ribbed 4 in',
          bars: [
            { from: 9 * HOUR, to: 12 * HOUR, order: 0, text: '' },
            { from: 11 * HOUR, to: NEXT + 9 * HOUR, order: 2, text: '' },
          ],
        },
      ],
    },
  ],
  orders: [
    { name: '2101', due: 17 * HOUR, finish: 16 * HOUR, late: 0 },
    { name: '2102', finish: 15 * HOUR, late: 0 },
    { name: '2103', due: 17 * HOUR, finish: NEXT + 11 * HOUR, late: 18 * HOUR },
  ],
  now: 10.25 * HOUR,
};
