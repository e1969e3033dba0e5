import { describe, expect, test } from 'vitest';
import { effusivity } from '../../../shared/heat/contactTemperature.ts';
import { solveLayers } from '../../../shared/heat/solver/solveLayers.ts';
import type { StackProfile } from '../../../shared/heat/solver/stackProfile.ts';

// Textbook bodies through the layer solver: one "pour" is the body at its start temperature, one "mold" its surroundings.

const NO_LOSS = { coefficient: 0, airTemperature: 20 };
/** So large that the face takes the mold's temperature. */
const PERFECT = 1e9;

interface Body {
  readonly thickness: number;
  readonly conductivity: number;
  readonly density: number;
  readonly specificHeat: number;
  readonly start: number;
}

function solveBody({ start, ...body }: Body, mold: number, wallCoefficient: number, until: number) {
  return solveLayers({
    pours: [{ ...body, time: 0, temperature: start }],
    mold,
    wallCoefficient,
    air: NO_LOSS,
    until,
    profileTimes: [until],
    resolution: { cellsPerLayer: 200, stepShare: 0.05 },
  });
}

/** On straight lines between the profile's points. */
function at(profile: StackProfile | undefined, height: number): number {
  if (profile === undefined) return Number.NaN;
  const { heights, temperatures } = profile;
  const above = heights.findIndex((one) => one >= height);
  const [high = Number.NaN, low = heights[0] ?? Number.NaN] = [heights[above], heights[above - 1]];
  const [top = Number.NaN, bottom = top] = [temperatures[above], temperatures[above - 1]];
  return high === low ? top : bottom + ((height - low) / (high - low)) * (top - bottom);
}

test('C7 slab of 1 m with one face suddenly cold, 6000 s (GEANKOPLIS, Ex. 5.4-2, exact series)', () => {
  const body = { thickness: 1, conductivity: 20, density: 1000, specificHeat: 1000, start: 100 };
  const { profiles } = solveBody(body, 0, PERFECT, 6000);
  [31.668, 58.469, 77.506, 88.322, 91.755].forEach((expected, index) => {
    // Grid and step; the book's own twenty slices are off by 0.14 to 0.33.
    expect(at(profiles[0], 0.2 * (index + 1))).toBeNear(expected, { absolute: 0.01 });
  });
});

test('C12 steel pipe wall heated by oil for 8 min (INCROPERA, Ex. 5.4)', () => {
  const body = {
    thickness: 0.04,
    conductivity: 63.9,
    density: 7832,
    specificHeat: 434,
    start: -20,
  };
  const { profiles, heatFromMold } = solveBody(body, 60, 500, 480);
  // The book rounds its eigenvalue.
  expect(at(profiles[0], 0.04)).toBeNear(43, { absolute: 0.2 });
  expect(500 * (60 - at(profiles[0], 0))).toBeNear(7400, { relative: 0.012 });
  // Per meter of a pipe of 1 m diameter.
  expect(heatFromMold * Math.PI).toBeNear(2.73e7, { relative: 0.003 });
});

test.each([{ fourier: 1, middle: 0.534, face: 0.348 }])(
  'Bi 1, Fo $fourier: middle and face (INCROPERA, Table 5.1, one term)',
  ({ middle, face }) => {
    const body = { thickness: 1, conductivity: 1, density: 1, specificHeat: 1, start: 1 };
    const { profiles } = solveBody(body, 0, 1, 1);
    // Three figures.
    expect(at(profiles[0], 1)).toBeNear(middle, { absolute: 6e-4 });
    expect(at(profiles[0], 0)).toBeNear(face, { absolute: 6e-4 });
  },
);

describe('a thick body is semi-infinite', () => {
  const steel = {
    thickness: 0.3,
    conductivity: 45,
    density: 1000,
    specificHeat: 45 / 0.014,
    start: 35,
  };

  test('C14a steel whose face jumps to 250 °C: 118.5 °C at 2.5 cm after 30 s (HOLMAN, Ex. 4-2)', () => {
    const { profiles } = solveBody(steel, 250, PERFECT, 30);
    // Four figures, and the grid.
    expect(at(profiles[0], 0.025)).toBeNear(118.5, { absolute: 0.1 });
  });

  test('C14b the same under 320 kW/m2: 79.3 °C at 2.5 cm, 199.4 °C at the face (HOLMAN, Ex. 4-2)', () => {
    // A very hot source through a poor contact is a constant flux, to 1 part in 5000.
    const { profiles } = solveBody(steel, 1e6, 0.32, 30);
    expect(at(profiles[0], 0.025)).toBeNear(79.3, { absolute: 0.1 });
    expect(at(profiles[0], 0)).toBeNear(199.4, { absolute: 0.1 });
  });

  test('C15 soil for 60 days at -15 °C: frozen to 0.68 m (INCROPERA, Ex. 5.6)', () => {
    // Time and heat capacity both a ten-thousandth: the same Fourier number.
    const soil = {
      thickness: 5,
      conductivity: 0.52,
      density: 2050,
      specificHeat: 0.184,
      start: 20,
    };
    const { profiles } = solveBody(soil, -15, PERFECT, 60 * 8.64);
    expect(at(profiles[0], 0.6766)).toBeNear(0, { absolute: 0.05 });
  });

  test.each([
    { name: 'wood', thickness: 1, conductivity: 1.26, diffusivity: 1.1e-5, face: 149 },
    { name: 'aluminum', thickness: 3, conductivity: 237, diffusivity: 9.71e-5, face: 22 },
  ])('C30 $name under 1250 W/m2 for 20 min: $face °C (CENGEL, Ex. 4-7)', (row) => {
    const { thickness, conductivity, diffusivity } = row;
    const specificHeat = conductivity / diffusivity / 1000;
    const block = { thickness, conductivity, density: 1000, specificHeat, start: 20 };
    const { profiles } = solveBody(block, 1e6, 1.25e-3, 1200);
    // Whole degrees.
    expect(at(profiles[0], 0)).toBeNear(row.face, { absolute: 0.5 });
  });
});

describe('two bodies in contact (CENGEL, section 4-3)', () => {
  const aluminum = { conductivity: 237, density: 2702, specificHeat: 903 };
  const skin = { conductivity: 0.37, density: 1000, specificHeat: 1.1e6 / 370 };
  const { layers } = solveLayers({
    pours: [
      { ...aluminum, time: 0, thickness: 1, temperature: 15 },
      {
        ...skin,
        conductivity: 0.37,
        specificHeat: 1.21e6 / 370,
        time: 1,
        thickness: 0.02,
        temperature: 35,
      },
    ],
    mold: 15,
    air: NO_LOSS,
    until: 20,
    bondTemperature: 15.5,
    resolution: { cellsPerLayer: 200, stepShare: 0.05 },
  });
  const joint = layers[0]?.joint;

  test('C17 aluminum holds 24 kJ/(m2 K s^0.5)', () => {
    // Two figures.
    expect(effusivity(aluminum)).toBeNear(24_000, { relative: 0.003 });
  });

  test('C16 skin at 35 °C on aluminum at 15 °C meets at 15.9 °C', () => {
    expect(joint?.surfaceBefore).toBeNear(15, { absolute: 1e-9 });
    // Three figures.
    expect(joint?.contactTemperature).toBeNear(15.9, { absolute: 0.05 });
  });

  test('and stays there while neither far side is felt', () => {
    const later = layers[0]?.readings.filter(({ time }) => time > 3) ?? [];
    expect(later.length).toBeGreaterThan(0);
    // Half-cells of both bodies at the joint.
    for (const { surface } of later)
      expect(surface).toBeNear(joint?.contactTemperature ?? Number.NaN, { absolute: 0.05 });
    // All of the time after contact.
    expect(joint?.secondsAboveBond).toBeNear(19, { absolute: 0.05 });
    expect(joint?.verdict).toBe('bonds');
  });
});
