import { expect, test } from 'vitest';
import { AIR_STATES } from '../../../shared/heat/solver/airStates.ts';
import type { LayerStack } from '../../../shared/heat/solver/layerStack.ts';
import { layerThicknesses } from '../../../shared/heat/solver/layerThicknesses.ts';
import { moldAt } from '../../../shared/heat/solver/moldCourse.ts';
import { solveLayers } from '../../../shared/heat/solver/solveLayers.ts';
import { DEFAULTS } from '../../../shared/material/defaults.ts';
import { errorText } from '../errorText.ts';

const POUR = { time: 0, thickness: 0.003, temperature: 158 };

function refusal(change: Partial<LayerStack>): string {
  return errorText(() => solveLayers({ pours: [POUR], mold: 100, ...change }));
}

test.each<{ change: Partial<LayerStack>; says: string }>([
  { change: { pours: [] }, says: 'number of pours must be at least 1, got 0' },
  {
    change: { pours: [{ ...POUR, time: -1 }] },
    says: 'time of the pour must be at least 0 s, got -1 s',
  },
  {
    change: { pours: [POUR, POUR] },
    says: 'time of the pour must be greater than time of the pour before (0 s), got 0 s',
  },
  {
    change: { pours: [{ ...POUR, thickness: 0 }] },
    says: 'layer thickness must be greater than 0 m, got 0 m',
  },
  {
    change: { pours: [{ ...POUR, temperature: Number.NaN }] },
    says: 'pour temperature must be a number (°C), got not a number',
  },
  {
    change: { pours: [{ ...POUR, conductivity: 0 }] },
    says: 'conductivity must be greater than 0 W/m·K, got 0 W/m·K',
  },
  {
    change: { pours: [{ ...POUR, density: 0 }] },
    says: 'density must be greater than 0 kg/m³, got 0 kg/m³',
  },
  {
    change: { pours: [{ ...POUR, specificHeat: 0 }] },
    says: 'specific heat must be greater than 0 J/kg·K, got 0 J/kg·K',
  },
  {
    change: { mold: Number.NaN },
    says: 'mold temperature must be a number (°C), got not a number',
  },
  {
    change: { mold: (time) => (time > 60 ? Number.NaN : 100) },
    says: 'mold temperature must be a number (°C), got not a number',
  },
  { change: { mold: [] }, says: 'number of mold readings must be at least 1, got 0' },
  {
    change: { mold: [5, 5].map((time) => ({ time, temperature: 100 })) },
    says: 'time of mold reading must be greater than time of the reading before (5 s), got 5 s',
  },
  {
    change: { air: { coefficient: -1, airTemperature: 38 } },
    says: 'heat loss of the free surface must be at least 0 W/m²·K, got -1 W/m²·K',
  },
  {
    change: { air: { coefficient: 12, airTemperature: Number.NaN } },
    says: 'air temperature must be a number (°C), got not a number',
  },
  {
    change: { wallCoefficient: 0 },
    says: 'plastic to mold conductance must be greater than 0 W/m²·K, got 0 W/m²·K',
  },
  { change: { shapeFactor: 0 }, says: 'shape factor must be greater than 0, got 0' },
  { change: { until: 0 }, says: 'end of the time solved must be greater than 0 s, got 0 s' },
  {
    change: { setTemperature: Number.NaN },
    says: 'set temperature must be a number (°C), got not a number',
  },
  {
    change: { firmTemperature: Number.NaN },
    says: 'firm temperature must be a number (°C), got not a number',
  },
  {
    change: { bondTemperature: Number.NaN },
    says: 'bond temperature must be a number (°C), got not a number',
  },
  {
    change: { followingPour: Number.NaN },
    says: 'next pour temperature must be a number (°C), got not a number',
  },
  {
    change: { until: 60, profileTimes: [61] },
    says: 'time of a profile must be at most 60 s, got 61 s',
  },
  {
    change: { resolution: { cellsPerLayer: 1, stepShare: 0.1 } },
    says: 'cells per layer must be at least 2, got 1',
  },
  {
    change: { resolution: { cellsPerLayer: 8, stepShare: 0 } },
    says: 'step over time must be greater than 0, got 0',
  },
])('$says', ({ change, says }) => {
  expect(refusal(change)).toBe(says);
});

test('a stack is solved until 20 minutes after its last pour', () => {
  const pours = [POUR, { ...POUR, time: 90 }];
  expect(solveLayers({ pours, mold: 100 }).until).toBe(90 + 1200);
});

test('drafts lie inside the ranges of the defaults, and more draft loses more', () => {
  const { surfaceCoefficient, localAirTemperature } = DEFAULTS;
  const drafts = [AIR_STATES.sheltered, AIR_STATES.normal, AIR_STATES.drafty];
  drafts.forEach(({ coefficient, airTemperature }, index) => {
    expect(coefficient).toBeGreaterThanOrEqual(surfaceCoefficient.low);
    expect(coefficient).toBeLessThanOrEqual(surfaceCoefficient.high);
    expect(airTemperature).toBeGreaterThanOrEqual(localAirTemperature.low);
    expect(airTemperature).toBeLessThanOrEqual(localAirTemperature.high);
    const stiller = drafts[index - 1];
    if (stiller === undefined) return;
    expect(coefficient).toBeGreaterThan(stiller.coefficient);
    expect(airTemperature).toBeLessThan(stiller.airTemperature);
  });
});

test('mold readings are joined by straight lines and held at both ends', () => {
  const course = moldAt([
    { time: 10, temperature: 100 },
    { time: 20, temperature: 110 },
    { time: 40, temperature: 90 },
  ]);
  expect([0, 10, 15, 20, 30, 40, 99].map(course)).toEqual([100, 100, 105, 110, 100, 90, 90]);
});

test('readings of a straight climb and the climb itself give one solution', () => {
  const readings = [
    { time: 0, temperature: 90 },
    { time: 1200, temperature: 114 },
  ];
  const byReadings = solveLayers({ pours: [POUR], mold: readings });
  const byFunction = solveLayers({ pours: [POUR], mold: (time) => 90 + 0.02 * time });
  // Rounding of the line.
  expect(byReadings.heatFromMold).toBeNear(byFunction.heatFromMold, { absolute: 1e-4 });
});

test('layers of a V cavity add up to the whole fill over its wetted metal', () => {
  // A right-angled V filled to 4 and 8 mm: area h^2, metal 2 sqrt 2 h, M = h / (2 sqrt 2).
  const fills = [0.004, 0.008].map((height) => ({
    volume: height ** 2,
    wettedArea: 2 * Math.SQRT2 * height,
  }));
  // Rounding.
  for (const thickness of layerThicknesses(fills))
    expect(thickness).toBeNear(0.004 / (2 * Math.SQRT2), { relative: 1e-12 });
});

test.each([
  { fill: { volume: 0, wettedArea: 1 }, says: 'volume filled must be greater than 0 m³, got 0 m³' },
  { fill: { volume: 1, wettedArea: 0 }, says: 'wetted area must be greater than 0, got 0' },
])('$says', ({ fill, says }) => {
  expect(errorText(() => layerThicknesses([fill]))).toBe(says);
});

test('a fill that adds more metal than plastic is refused', () => {
  const fills = [
    { volume: 2, wettedArea: 1 },
    { volume: 3, wettedArea: 2 },
  ];
  expect(errorText(() => layerThicknesses(fills))).toBe(
    'volume over wetted area must be greater than 2 m, got 1.5 m',
  );
});
