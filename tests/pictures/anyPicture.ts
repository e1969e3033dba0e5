import fc from 'fast-check';
import type { Picture } from '../../shared/pictures/pictureTypes.ts';
import { evenReal } from '../evenReal.ts';
import { HOSTILE } from '../paper/hostile.ts';

const temperature = evenReal(-20, 400);
/** Up to half a day, and as short as a blink. */
const seconds = fc.oneof(evenReal(0, 43_200), evenReal(0, 1e-3));
const system = fc.constantFrom('US' as const, 'metric' as const);
const name = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 300 }),
  fc.constantFrom(...HOSTILE, ''),
  fc.constant('長い名前'.repeat(40)),
);
const band = fc.record({ low: seconds, high: seconds }, { requiredKeys: [] });
const temperatureBand = fc.record({ low: temperature, high: temperature }, { requiredKeys: [] });
const readings = fc.array(fc.record({ trial: name, seconds, top: temperature }), { maxLength: 12 });

const heatUp = fc.record(
  {
    kind: fc.constant('heat-up' as const),
    system,
    course: fc.array(
      fc.record({
        seconds,
        plate: temperature,
        top: temperature,
        low: temperature,
        high: temperature,
      }),
      { maxLength: 8 },
    ),
    readings,
    because: name,
    target: fc.record(
      {
        top: temperature,
        boilingPoint: temperature,
        setting: temperature,
        seconds,
        band,
        plateau: temperature,
        plateauBand: temperatureBand,
        firstPour: seconds,
        onAt: evenReal(-1440, 2880),
      },
      { requiredKeys: ['top', 'boilingPoint', 'setting', 'seconds', 'plateau', 'firstPour'] },
    ),
  },
  { requiredKeys: ['kind', 'system', 'course', 'readings'] },
);

const window = fc.oneof(
  fc.record({ kind: fc.constant('between' as const), earliest: seconds, latest: seconds }),
  fc.record({ kind: fc.constant('from' as const), earliest: seconds }),
  fc.record({
    kind: fc.constant('none' as const),
    why: fc.constantFrom('stays soft' as const, 'too cool' as const),
    because: name,
  }),
);
const layer = fc.record(
  {
    name,
    run: fc.record({
      firstAt: seconds,
      lastAt: seconds,
      passTime: seconds,
      stops: fc.nat({ max: 40 }),
    }),
    openTime: fc.oneof(
      fc.constant({ kind: 'stays open' as const }),
      fc.record({ kind: fc.constant('seconds' as const), seconds }),
    ),
    window,
    bands: fc.record(
      { open: band, earliest: band, latest: band, contact: temperatureBand },
      { requiredKeys: ['open'] },
    ),
  },
  { requiredKeys: ['name', 'run', 'openTime'] },
);
const timeline = fc.record({
  kind: fc.constant('layer-timeline' as const),
  layers: fc.array(layer, { minLength: 1, maxLength: 5 }),
});

const height = evenReal(0, 0.05);
const profile = fc.record({
  kind: fc.constant('layer-profile' as const),
  system,
  names: fc.array(name, { maxLength: 5 }),
  jointHeights: fc.array(height, { maxLength: 5 }),
  profiles: fc.array(
    fc.record({
      time: seconds,
      heights: fc.array(height, { maxLength: 6 }),
      temperatures: fc.array(temperature, { maxLength: 6 }),
    }),
    { maxLength: 8 },
  ),
  joints: fc.array(
    fc.record(
      {
        name,
        height,
        contact: temperature,
        band: temperatureBand,
        verdict: fc.constantFrom('bonds' as const, 'peels' as const),
      },
      { requiredKeys: ['name', 'height', 'contact', 'verdict'] },
    ),
    { maxLength: 4 },
  ),
  setTemperature: temperature,
  bondTemperature: temperature,
});

const trial = fc.record(
  {
    kind: fc.constant('heat-trial' as const),
    title: name,
    system,
    target: temperature,
    curve: fc.array(fc.record({ seconds, top: temperature }), { maxLength: 8 }),
    readings,
  },
  { requiredKeys: ['kind', 'title', 'system', 'curve', 'readings'] },
);

/** Within the planned fortnight, and absurd. */
const moment = fc.oneof(evenReal(0, 1_300_000), seconds);
const ranges = fc
  .tuple(moment, moment)
  .map(([one, other]) => ({ from: Math.min(one, other), to: Math.max(one, other) }));
const timetable = fc.record(
  {
    kind: fc.constant('timetable' as const),
    title: name,
    system,
    days: fc.uniqueArray(fc.nat({ max: 13 }), { maxLength: 5 }).chain((days) =>
      fc.tuple(
        ...days
          .sort((one, other) => one - other)
          .map((day) =>
            fc.tuple(name, evenReal(0, 0.5)).map(([said, start]) => ({
              name: said,
              from: (day + start) * 86_400,
              to: (day + 2 * start) * 86_400,
            })),
          ),
      ),
    ),
    groups: fc.array(
      fc.record({
        name,
        rows: fc.array(
          fc.record({
            name,
            bars: fc.array(
              fc
                .tuple(ranges, fc.nat({ max: 8 }), name)
                .map(([span, order, text]) => ({ ...span, order, text })),
              { maxLength: 6 },
            ),
          }),
          { maxLength: 3 },
        ),
      }),
      { maxLength: 3 },
    ),
    orders: fc.array(
      fc.record(
        { name, due: moment, finish: moment, late: seconds },
        { requiredKeys: ['name', 'finish', 'late'] },
      ),
      { maxLength: 8 },
    ),
    now: moment,
  },
  { requiredKeys: ['kind', 'title', 'system', 'days', 'groups', 'orders'] },
);

/** Pictures of any data that a plan or a trial could hold, absurd ones among them. */
export const ANY_PICTURE: fc.Arbitrary<Picture> = fc.oneof(
  heatUp,
  timeline,
  profile,
  trial,
  timetable,
);
