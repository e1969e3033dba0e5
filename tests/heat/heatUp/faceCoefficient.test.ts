import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airFilm, SEA_LEVEL_AIR } from '../../../shared/heat/heatUp/airFilm.ts';
import { faceCoefficient } from '../../../shared/heat/heatUp/faceCoefficient.ts';
import {
  horizontalNusselt,
  verticalNusselt,
  verticalNusseltOverall,
} from '../../../shared/heat/heatUp/horizontalNusselt.ts';
import { radiantFlux, radiationCoefficient } from '../../../shared/heat/heatUp/radiantFlux.ts';
import { rayleighNumber } from '../../../shared/heat/heatUp/rayleighNumber.ts';
import { evenReal } from '../../evenReal.ts';
import { errorText } from '../errorText.ts';

/** Air as CENGEL Example 9-2 takes it, plate at 90 °C in a room at 30 °C. */
const CENGEL_AIR = {
  conductivity: 0.02808,
  kinematicViscosity: 1.896e-5,
  prandtl: 0.7202,
  expansion: 1 / 333,
};
/** Air as INCROPERA Example 9.3 takes it, duct at 45 °C in a room at 15 °C. */
const INCROPERA_AIR = {
  conductivity: 0.0265,
  kinematicViscosity: 16.2e-6,
  prandtl: 16.2 / 22.9,
  expansion: 0.0033,
};

describe('airFilm', () => {
  test.each([
    {
      given: 20,
      conductivity: 0.02514,
      viscosity: 1.516e-5,
      prandtl: 0.7309,
      source: 'CENGEL, Table A-15',
    },
    {
      given: 60,
      conductivity: 0.02808,
      viscosity: 1.896e-5,
      prandtl: 0.7202,
      source: 'CENGEL, Table A-15',
    },
    {
      given: 26.85,
      conductivity: 0.0263,
      viscosity: 15.89e-6,
      prandtl: 15.89 / 22.5,
      source: 'INCROPERA, Table A.4',
    },
  ])('air at $given °C ($source)', ({ given, conductivity, viscosity, prandtl, source }) => {
    const film = airFilm(given, SEA_LEVEL_AIR);
    // The two tables differ by 2.5 % in conductivity; the standard's fit sides with the second.
    const spread = source.startsWith('CENGEL') ? 0.026 : 0.005;
    expect(film.conductivity).toBeNear(conductivity, { relative: spread });
    // Tables of other years: up to 1.3 % in viscosity, 3.5 % in Prandtl number.
    expect(film.kinematicViscosity).toBeNear(viscosity, { relative: 0.014 });
    expect(film.prandtl).toBeNear(prandtl, { relative: 0.035 });
  });

  test('thinner air is more viscous by volume and conducts the same', () => {
    const [low, high] = [airFilm(60, SEA_LEVEL_AIR), airFilm(60, SEA_LEVEL_AIR / 2)];
    // Rounding only.
    expect(high.kinematicViscosity).toBeNear(2 * low.kinematicViscosity, { relative: 1e-12 });
    expect(high.conductivity).toBe(low.conductivity);
  });

  test('figures out of range are named', () => {
    expect(errorText(() => airFilm(500, SEA_LEVEL_AIR))).toBe(
      'film temperature must be at most 400 °C, got 500 °C',
    );
    expect(errorText(() => airFilm(20, 0))).toBe(
      'air pressure must be greater than 0 Pa, got 0 Pa',
    );
  });
});

describe('free convection', () => {
  test('a vertical plate of 0.6 m at 90 °C (CENGEL, Example 9-2a)', () => {
    const rayleigh = rayleighNumber(CENGEL_AIR, 60, 0.6);
    // Three figures printed; the book takes g as 9.81.
    expect(rayleigh).toBeNear(7.65e8, { relative: 2e-3 });
    const nusselt = verticalNusseltOverall(rayleigh, CENGEL_AIR.prandtl);
    // Four figures printed.
    expect(nusselt).toBeNear(113.34, { relative: 1e-3 });
    const coefficient = (nusselt * CENGEL_AIR.conductivity) / 0.6;
    expect(coefficient).toBeNear(5.3, { relative: 2e-3 });
    expect(coefficient * 0.36 * 60).toBeNear(115, { absolute: 0.5 });
  });

  test('the same plate face up lies between the two editions that keep the quarter power past its switch (CENGEL, Example 9-2b)', () => {
    const rayleigh = rayleighNumber(CENGEL_AIR, 60, 0.15);
    // Three figures printed; the book takes g as 9.81.
    expect(rayleigh).toBeNear(1.195e7, { relative: 1e-3 });
    const nusselt = horizontalNusselt(rayleigh, 'hot up');
    expect(nusselt).toBeGreaterThan(31.8);
    expect(nusselt).toBeLessThan(34.7);
    // The quarter power up to the switch, scaled to the book's number: three figures printed.
    const below = horizontalNusselt(rayleigh / 16, 'hot up') * 2;
    expect(below).toBeNear(31.75, { relative: 1e-3 });
    expect((below * CENGEL_AIR.conductivity) / 0.15).toBeNear(5.94, { relative: 2e-3 });
  });

  test('a duct 0.75 m wide and 0.3 m high at 45 °C (INCROPERA, Example 9.3)', () => {
    const { conductivity, prandtl } = INCROPERA_AIR;
    const flat = rayleighNumber(INCROPERA_AIR, 30, 0.375);
    const tall = rayleighNumber(INCROPERA_AIR, 30, 0.3);
    const side = (verticalNusselt(tall, prandtl) * conductivity) / 0.3;
    const top = (horizontalNusselt(flat, 'hot up') * conductivity) / 0.375;
    const bottom = (horizontalNusselt(flat, 'hot down') * conductivity) / 0.375;
    // Three figures printed; Prandtl rounded there, g 9.8.
    expect(side).toBeNear(4.23, { relative: 3e-3 });
    expect(top).toBeNear(5.47, { relative: 3e-3 });
    expect(bottom).toBeNear(2.07, { relative: 3e-3 });
    expect((2 * 0.3 * side + 0.75 * (top + bottom)) * 30).toBeNear(246, { absolute: 0.6 });
  });

  test('horizontal plates in a liquid (MCADAMS)', () => {
    const rayleigh = 5.54 * 3.21e8;
    // Seven figures printed.
    expect(horizontalNusselt(rayleigh, 'hot up')).toBeNear(181.7312, { relative: 1e-6 });
    expect(horizontalNusselt(rayleigh, 'hot down')).toBeNear(55.4456, { relative: 1e-6 });
  });

  test('a tall face goes over to the overall fit', () => {
    expect(verticalNusselt(1.01e9, 0.71)).toBe(verticalNusseltOverall(1.01e9, 0.71));
    expect(verticalNusselt(0.99e9, 0.71)).toBeLessThan(verticalNusseltOverall(0.99e9, 0.71));
  });
});

describe('radiation', () => {
  test('a person in a room (CENGEL, Example 1-9)', () => {
    // Three figures printed.
    expect(1.4 * radiantFlux(0.95, 30, 10)).toBeNear(152, { absolute: 0.5 });
  });

  test('as a coefficient, 305 K and 297 K (INCROPERA, Example 1.6)', () => {
    // Two figures printed.
    expect(radiationCoefficient(0.95, 305 - 273.15, 297 - 273.15)).toBeNear(5.9, {
      absolute: 0.05,
    });
  });

  test('a black plate at 90 °C (CENGEL, Example 9-2)', () => {
    // Three figures printed; the book puts 0 °C at 273 K.
    expect(0.36 * radiantFlux(1, 90, 30)).toBeNear(182.36, { relative: 2e-3 });
  });

  test('coefficient times difference is the flux', () => {
    const celsius = evenReal(-20, 300);
    fc.assert(
      fc.property(celsius, celsius, (hot, cold) => {
        const flux = radiationCoefficient(0.85, hot, cold) * (hot - cold);
        // Rounding of fourth powers near equal temperatures.
        expect(flux).toBeNear(radiantFlux(0.85, hot, cold), { absolute: 1e-9 });
      }),
    );
  });
});

describe('faceCoefficient', () => {
  const ROOM = { temperature: 22, pressure: SEA_LEVEL_AIR };

  test('a machined 6 x 4 in top at 100 °C loses what the default says (HEATSTUDY)', () => {
    const face = { kind: 'top', length: (24 * 0.0254) / 20, emissivity: 0.1 } as const;
    // Three figures printed; the conductivity of air differs by 2.5 % between tables.
    expect(faceCoefficient(face, 100, ROOM)).toBeNear(10.4, { relative: 0.025 });
    const anodized = { ...face, emissivity: 0.85 };
    expect(faceCoefficient(anodized, 100, ROOM)).toBeNear(17, { relative: 0.05 });
  });

  test('a hotter face loses more per kelvin, thin air takes less, a cold top hardly anything', () => {
    const face = { kind: 'top', length: 0.03, emissivity: 0.1 } as const;
    const at = (temperature: number) => faceCoefficient(face, temperature, ROOM);
    expect(at(120)).toBeGreaterThan(at(60));
    const high = { ...ROOM, pressure: 70_000 };
    expect(faceCoefficient(face, 100, high)).toBeLessThan(at(100));
    expect(at(12)).toBeLessThan(at(32));
  });
});

test('a face far beyond any metal’s heat loses as at the end of the film’s range, never infinitely', () => {
  const face = { kind: 'top', length: 0.03, emissivity: 0.1 } as const;
  const room = { temperature: 22, pressure: 101_325 };
  // The film is taken between -50 and 400 °C, half way to a room at 22 °C.
  const most = faceCoefficient(face, 778, room);
  for (const wild of [1e6, 1e60]) expect(faceCoefficient(face, wild, room)).toBe(most);
  const least = faceCoefficient(face, -122, room);
  expect(faceCoefficient(face, -1e60, room)).toBe(least);
});
