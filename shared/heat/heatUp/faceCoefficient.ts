import { AIR_FILM_RANGE, airFilm } from './airFilm.ts';
import { horizontalNusselt, verticalNusselt } from './horizontalNusselt.ts';
import { radiationCoefficient } from './radiantFlux.ts';
import { rayleighNumber } from './rayleighNumber.ts';

/** A face in a still room. */
export interface Face {
  readonly kind: 'top' | 'side';
  /** Height of a side, area over perimeter of a top [m], > 0 */
  readonly length: number;
  readonly emissivity: number;
}

export interface Room {
  /** Of air and walls [°C] */
  readonly temperature: number;
  /** Of the air [Pa]; lower up the mountains, where convection is weaker */
  readonly pressure: number;
}

/**
 * Heat that a face loses to a still room by free convection and radiation, per area and kelvin.
 *
 * h = Nu k / L + eps sigma (T + T_room) (T^2 + T_room^2), air taken at the mean temperature.
 *
 * @param temperature - of the face [°C]
 * @returns [W/(m2 K)]
 * @source INCROPERA, sections 1.2 and 9.6
 */
export function faceCoefficient(face: Face, temperature: number, room: Room): number {
  const { atLeast, atMost } = AIR_FILM_RANGE;
  // A trial step may overshoot wildly before it is refused.
  const mean = Math.min(atMost, Math.max(atLeast, (temperature + room.temperature) / 2));
  const at = 2 * mean - room.temperature;
  const film = airFilm(mean, room.pressure);
  const rayleigh = rayleighNumber(film, Math.abs(at - room.temperature), face.length);
  const looking = at >= room.temperature ? 'hot up' : 'hot down';
  const nusselt =
    face.kind === 'top'
      ? horizontalNusselt(rayleigh, looking)
      : verticalNusselt(rayleigh, film.prandtl);
  const radiation = radiationCoefficient(face.emissivity, at, room.temperature);
  return (nusselt * film.conductivity) / face.length + radiation;
}
