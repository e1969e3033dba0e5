import { describe, expect, test } from 'vitest';
import { bondWindow } from '../../shared/heat/bondWindow.ts';
import { layerContactTemperature } from '../../shared/heat/contactTemperature.ts';
import { findRoot } from '../../shared/heat/findRoot.ts';
import { layerCooling, layerTemperature } from '../../shared/heat/layerCooling.ts';
import { moldBalance } from '../../shared/heat/moldOnPlate.ts';
import { openTime } from '../../shared/heat/openTime.ts';
import { type MoldCourse, type MoldReading, moldAt } from '../../shared/heat/solver/moldCourse.ts';
import { solveLayers } from '../../shared/heat/solver/solveLayers.ts';
import { DEFAULTS } from '../../shared/material/defaults.ts';
import { usualFigures } from '../../shared/plan/heat/heatFigures.ts';
import { plateHeat } from '../../shared/plan/heat/plateHeat.ts';
import { toEngine } from '../../shared/units/toEngine.ts';
import { benchMold, benchPlate, benchShop } from '../plan/heat/heatBench.ts';
import { moldHeatUp } from './moldHeatUp.ts';

// What the shop knows about heat (TRADE) against the models with default parameters, none bent to pass. Misses are
// asserted as misses. Figures beside it come from HEATSTUDY, whose mold loses heat at a rate that varies.

const INCH = 0.0254;
const PLATE = toEngine(270, 'degF');
const BOILING = 100;
const START = DEFAULTS.pourTemperature.value - DEFAULTS.pourLoss.value;

function mold(inches: number, contactConductance: number) {
  const block = { length: 6 * INCH, width: 4 * INCH, height: inches * INCH, roomTemperature: 22 };
  return { mold: { ...block, contactConductance }, plateSetting: PLATE };
}

function minutesToBoiling(inches: number, conductance: number): number {
  const { time } = moldHeatUp(mold(inches, conductance), BOILING);
  return time.kind === 'reached' ? time.seconds / 60 : Number.POSITIVE_INFINITY;
}

/** Default figures, dial at 270 °F; the top is to read boiling. */
function onGriddle(inches: number, warmUp: number) {
  const shop = benchShop({ topTarget: 0 });
  const plate = benchPlate({ warmUp });
  const set = { setting: PLATE, count: 1, figures: usualFigures(plate, shop) };
  return plateHeat(benchMold({ blockHeight: inches * INCH }), plate, shop, {
    ...set,
    effort: 'exact',
  });
}

function slab(millimeters: number, moldTemperature: number) {
  return { thickness: millimeters / 1000, startTemperature: START, moldTemperature };
}

function openSeconds(layer: Parameters<typeof openTime>[0]): number {
  const time = openTime(layer);
  return time.kind === 'seconds' ? time.seconds : Number.POSITIVE_INFINITY;
}

describe('fact 1: a plate at 270 °F brings the mold top to boiling in tens of minutes', () => {
  test.each([
    { inches: 1, plateau: 115, minutes: 14 },
    { inches: 1.5, plateau: 113, minutes: 21 },
  ])('$inches in block on a thin griddle', ({ inches, plateau, minutes }) => {
    const conductance = DEFAULTS.contactConductanceGriddle.value;
    // Reproduced within 2 K: one loss coefficient for all temperatures.
    expect(moldHeatUp(mold(inches, conductance), BOILING).plateau).toBeNear(plateau, {
      absolute: 2,
    });
    const time = minutesToBoiling(inches, conductance);
    expect(time).toBeGreaterThan(10);
    expect(time).toBeLessThan(45);
    // Documented miss: late by 13 % and 23 % against the study, which loses less than published correlations do.
    expect(time / minutes).toBeGreaterThan(1.1);
    expect(time / minutes).toBeLessThan(1.25);
  });

  test.each([
    { conductance: 170, thin: [7.6, 121], thick: [11, 120] },
    { conductance: 300, thin: [4, 125], thick: [6, 125] },
    { conductance: 1000, thin: [1.3, 130], thick: [1.8, 130] },
  ])('at $conductance W/m2K', ({ conductance, thin, thick }) => {
    for (const [inches, [minutes, plateau]] of [
      [1, thin],
      [1.5, thick],
    ] as const) {
      const found = moldHeatUp(mold(inches, conductance), BOILING).plateau;
      // Whole degrees and one loss coefficient.
      expect(found).toBeNear(plateau ?? Number.NaN, { absolute: 1.6 });
      // Late by up to 20 %; the study's shortest times carry two figures at most.
      const time = minutesToBoiling(inches, conductance);
      expect(time).toBeNear((minutes ?? Number.NaN) * 1.1, { relative: 0.12 });
    }
  });

  test('only conductances of about 59 to 169 W/m2K give 10 to 45 min', () => {
    const conductance = (minutes: number) =>
      findRoot((trial) => minutesToBoiling(1.25, trial) - minutes, 57, 1000);
    // The study's percentiles over its draws; ours for one block and constant loss: 15 %.
    expect(conductance(45)).toBeNear(59, { relative: 0.15 });
    expect(conductance(10)).toBeNear(169, { relative: 0.15 });
  });

  test('handbook conductance of flat pressed faces would give 2 to 5 min, against the fact', () => {
    for (const inches of [1, 1.5]) {
      expect(minutesToBoiling(inches, 500)).toBeGreaterThan(2);
      expect(minutesToBoiling(inches, 500)).toBeLessThan(5);
    }
  });

  test('documented miss: at 55 W/m2K the study reaches boiling with 1.5 in, constant loss does not', () => {
    const { plateau, time } = moldHeatUp(mold(1.5, 55), BOILING);
    expect(time.kind).toBe('unreachable');
    // The study ends at 102 °C.
    expect(plateau).toBeNear(102, { absolute: 3 });
  });
});

describe('fact 1 by the accurate path, as a plan takes it', () => {
  test.each([
    { inches: 1, warmUp: 0, from: 14 },
    { inches: 1.5, warmUp: 0, from: 21 },
    { inches: 1, warmUp: 480, from: 14 },
    { inches: 1.5, warmUp: 480, from: 21 },
  ])('$inches in block, plate warm after $warmUp s', ({ inches, warmUp, from }) => {
    const { plateau, heatUp = Number.NaN } = onGriddle(inches, warmUp);
    expect(plateau).toBeGreaterThanOrEqual(BOILING);
    // The study ends at 113 and 115 °C, its plate hot from the start; losses by published correlations are a tenth more.
    expect(plateau).toBeNear(114, { absolute: 3.5 });
    expect(heatUp / 60).toBeGreaterThan(from);
    expect(heatUp / 60).toBeLessThan(45);
  });
});

describe('fact 2: at boiling a layer keeps its give, and still bonds 20 minutes later', () => {
  test.each([
    { millimeters: 2, mean: 95.3, surface: 91.2 },
    { millimeters: 3, mean: 93.6, surface: 87.8 },
    { millimeters: 4, mean: 92.2, surface: 84.8 },
  ])('a $millimeters mm slab stays open', ({ millimeters, mean, surface }) => {
    const layer = slab(millimeters, BOILING);
    const open = openTime(layer);
    expect(open.kind).toBe('stays open');
    // The study's surface loss varies a little with temperature.
    expect(open.settledMean).toBeNear(mean, { absolute: 0.15 });
    expect(bondWindow(layer, { pourTemperature: START }).settledSurface).toBeNear(surface, {
      absolute: 0.15,
    });
  });

  test.each([
    { width: 8, depth: 4 },
    { width: 8, depth: 5 },
    { width: 12, depth: 5 },
  ])('a groove of $width x $depth mm stays open', ({ width, depth }) => {
    const open = openTime(slab((width * depth) / (width + 2 * depth), BOILING));
    expect(open.kind).toBe('stays open');
    // The study's grooves settle at 95 to 97 °C; volume over wetted area loses from the whole top: 1 K.
    expect(open.settledMean).toBeNear(96, { absolute: 2 });
  });

  test('documented miss: a 5 mm slab sets after about 400 s on a mold held at boiling', () => {
    // The study crosses at 403 s.
    expect(openSeconds(slab(5, BOILING))).toBeNear(403, { relative: 0.02 });
  });

  test('a mold that goes on climbing keeps 5 mm open', () => {
    expect(openTime(slab(5, 105)).kind).toBe('stays open');
  });

  test.each([
    { pour: 150, contact: 119 },
    { pour: 158, contact: 123 },
    { pour: 165, contact: 126 },
  ])('20 min on, a pour at $pour °C meets a 3 mm layer at $contact °C', ({ pour, contact }) => {
    const layer = slab(3, BOILING);
    const surface = layerTemperature(layerCooling(layer), 'surface', 20 * 60);
    // Whole degrees.
    expect(layerContactTemperature(surface, pour)).toBeNear(contact, { absolute: 0.6 });
    expect(bondWindow(layer, { pourTemperature: pour }).latest).toEqual({ kind: 'any time' });
  });
});

describe('fact 3: in a mold merely hot to the touch a thin vein is hard in under 30 s', () => {
  test.each([{ millimeters: 2 }, { millimeters: 2.5 }])('$millimeters mm does', (row) => {
    expect(openSeconds(slab(row.millimeters, 60))).toBeLessThan(30);
  });

  test('so does a groove of 6 x 4 mm', () => {
    expect(openSeconds({ ...slab(24 / 14, 60), shapeFactor: 1.55 })).toBeLessThan(30);
  });

  test.each([
    { millimeters: 3, seconds: 37 },
    { millimeters: 5, seconds: 89 },
  ])('documented miss: $millimeters mm takes $seconds s, conduction allows no less', (row) => {
    // Whole seconds and the study's grid.
    expect(openSeconds(slab(row.millimeters, 60))).toBeNear(row.seconds, { relative: 0.03 });
  });

  test('after 30 s the cold of the mold has not reached the top of a 5 mm slab: only the air has cooled it', () => {
    const surface = (surfaceCoefficient: number) => {
      const layer = { ...slab(5, 60), surfaceCoefficient };
      return layerTemperature(layerCooling(layer), 'surface', 30);
    };
    expect(surface(0)).toBeGreaterThan(150);
    expect(surface(12)).toBeGreaterThan(135);
  });
});

describe('fact 4: hot layers tear through the plastic, cold ones peel', () => {
  const BOND = DEFAULTS.bondTemperature.value;

  test.each([
    { surface: 88, pours: [150, 158, 165], contacts: [119, 123, 126], bonds: true },
    { surface: 55, pours: [150, 158, 165], contacts: [103, 107, 110], bonds: false },
    { surface: 25, pours: [150, 160, 170], contacts: [88, 93, 98], bonds: false },
  ])('a surface at $surface °C', ({ surface, pours, contacts, bonds }) => {
    pours.forEach((pour, index) => {
      const contact = layerContactTemperature(surface, pour);
      // Whole degrees.
      expect(contact).toBeNear(contacts[index] ?? Number.NaN, { absolute: 0.51 });
      expect(contact > BOND).toBe(bonds);
    });
  });

  test('a 3 mm layer set 3 min in a mold at 60 °C has a surface near 55 °C', () => {
    const surface = layerTemperature(layerCooling(slab(3, 60)), 'surface', 180);
    // Whole degrees; the study's air over a cool mold is cooler than the default.
    expect(surface).toBeNear(55, { absolute: 4 });
    expect(layerContactTemperature(surface, START)).toBeLessThan(112);
  });
});

describe('fact 5: nothing needs heating after the last top-off if the mold was hot from the start', () => {
  const LAST = 480;
  const pours = [
    { time: 0, thickness: 0.0025, temperature: START },
    { time: 240, thickness: 0.0015, temperature: START },
    { time: LAST, thickness: 0.003, temperature: START },
  ];

  /** The joint under the last layer, poured eight minutes after the top read boiling. */
  function lastJoint(mold: MoldCourse) {
    const joint = solveLayers({ pours, mold }).layers[1]?.joint;
    if (joint === undefined) throw new Error('a layer lies on the second');
    return joint;
  }

  /** From the last pour on the mold only loses, as on a cold board: worse than on a plate just switched off. */
  function switchedOff(climb: readonly MoldReading[], inches: number): MoldCourse {
    const { mold: block } = mold(inches, 0);
    const start = moldAt(climb)(LAST);
    const { timeConstant } = moldBalance(block);
    const cooling = [60, 120, 240, 480, 960, 1200].map((since) => ({
      time: LAST + since,
      temperature: 22 + (start - 22) * Math.exp(-since / timeConstant),
    }));
    return [...climb.filter(({ time }) => time <= LAST), ...cooling];
  }

  test.each([{ inches: 1 }, { inches: 1.5 }])(
    'in a $inches in block the last layer bonds as well with the plate off',
    ({ inches }) => {
      const { climb } = onGriddle(inches, 480);
      const on = lastJoint(climb);
      const off = lastJoint(switchedOff(climb, inches));
      expect(off.verdict).toBe('bonds');
      // What touches is decided as it lands.
      expect(off.contactTemperature).toBeNear(on.contactTemperature, { absolute: 1e-6 });
      expect(off.contactTemperature).toBeGreaterThan(DEFAULTS.bondTemperature.high);
      // Bonding takes seconds; more than nine tenths of the time above its temperature is left.
      expect(off.secondsAboveBond).toBeGreaterThan(60);
      expect(off.secondsAboveBond).toBeGreaterThan(0.9 * on.secondsAboveBond);
    },
  );

  test('needing it means the mold was too cold: at 60 °C the joint peels as it is poured', () => {
    const cold = lastJoint(60);
    expect(cold.verdict).toBe('peels');
    expect(cold.contactTemperature).toBeLessThan(DEFAULTS.bondTemperature.low);
  });
});
