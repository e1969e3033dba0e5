import { requireNumber } from '../errors/requireNumber.ts';
import { findRoot } from './findRoot.ts';
import { completeLayer, type LayerInMold } from './layerInMold.ts';
import { slabSeries } from './slabSeries.ts';

/** Enough for Fo > 0.01: a second into a 3 mm layer. Any place that falls sooner is told that, within that second. */
const TERMS = 8;

/** Where in the layer: its free surface (skinning, bond) or its mean (moves or not). */
export type LayerPlace = 'surface' | 'mean';

interface Term {
  /** exp(-rate t) [1/s] */
  readonly rate: number;
  readonly amplitude: Readonly<Record<LayerPlace, number>>;
}

/** A layer's cooling, ready to be read at any time. */
export interface LayerCooling {
  readonly start: number;
  /** Where each place settles while mold and air stay as they are [°C] */
  readonly settled: Readonly<Record<LayerPlace, number>>;
  readonly terms: readonly Term[];
}

/**
 * Cooling of a poured layer between a wall and air that both stay at their temperatures: exact series of the slab.
 *
 * T = T_settled(y) + sum A_n X_n(y) exp(-zeta_n^2 alpha t / (F L^2)); the settled profile is the straight line that
 * carries one flux through melt-metal contact, plastic and surface loss: q = (Tm - Ta) / (1/h_w + L/k + 1/h_s).
 * Left out: a mold that goes on climbing, the heat a later layer brings, heat of fusion (under 1 K), air under the layer.
 *
 * @throws InputError on a figure out of range, or a layer not hotter than mold and air
 * @source CARSLAW, section 3.11; INCROPERA, section 5.5
 */
export function layerCooling(layer: LayerInMold): LayerCooling {
  const it = completeLayer(layer);
  const resistance = it.thickness / it.conductivity;
  const wallBiot = it.wallCoefficient * resistance;
  const surfaceBiot = it.surfaceCoefficient * resistance;
  const drop =
    ((it.moldTemperature - it.airTemperature) * surfaceBiot) /
    (surfaceBiot / wallBiot + surfaceBiot + 1);
  const surface = it.moldTemperature - drop * (1 + 1 / wallBiot);
  const diffusivity = it.conductivity / (it.density * it.specificHeat);
  const scale = diffusivity / (it.shapeFactor * it.thickness ** 2);
  const terms = slabSeries({ wallBiot, surfaceBiot }, TERMS).map((mode) => {
    const amplitude = (it.startTemperature - surface) * mode.uniform - drop * mode.linear;
    return {
      rate: mode.eigenvalue ** 2 * scale,
      amplitude: { surface: amplitude, mean: amplitude * mode.mean },
    };
  });
  return { start: it.startTemperature, settled: { surface, mean: surface + drop / 2 }, terms };
}

/**
 * Temperature of a layer some time after its pour.
 * @param seconds - since the pour [s], >= 0
 * @returns [°C]
 * @throws InputError on a time below 0
 */
export function layerTemperature(
  cooling: LayerCooling,
  place: LayerPlace,
  seconds: number,
): number {
  requireNumber(seconds, 'time since the pour', { unit: 's', atLeast: 0 });
  return seconds === 0 ? cooling.start : temperatureAt(cooling, place, seconds);
}

/** When a place of the layer has fallen to a temperature. */
export type FallTime =
  | { readonly kind: 'seconds'; readonly seconds: number }
  | { readonly kind: 'from the start' }
  | { readonly kind: 'never'; readonly settled: number };

/**
 * Time until a place of the layer has cooled to a temperature. Cooling is monotone, so there is one such time or none.
 * @param temperature - [°C]
 * @returns seconds; `from the start` if it starts no hotter; `never` if it settles no cooler
 * @throws InputError when the temperature is not a number
 */
export function timeToFall(
  cooling: LayerCooling,
  place: LayerPlace,
  temperature: number,
): FallTime {
  requireNumber(temperature, 'temperature to fall to', { unit: 'degC' });
  const settled = cooling.settled[place];
  if (temperature >= cooling.start) return { kind: 'from the start' };
  if (temperature <= settled) return { kind: 'never', settled };
  // At 0 the cut-off series misses the start temperature; `layerTemperature` knows it.
  const excess = (seconds: number) => layerTemperature(cooling, place, seconds) - temperature;
  // Past this time the sum of all amplitudes at the slowest rate is less than what is left to fall.
  const whole = cooling.terms.reduce((sum, term) => sum + Math.abs(term.amplitude[place]), 0);
  const slowest = Math.min(...cooling.terms.map((term) => term.rate));
  const latest = Math.log(whole / (temperature - settled)) / slowest;
  return { kind: 'seconds', seconds: latest > 0 ? findRoot(excess, 0, latest) : 0 };
}

function temperatureAt(cooling: LayerCooling, place: LayerPlace, seconds: number): number {
  return cooling.terms.reduce(
    (sum, { amplitude, rate }) => sum + amplitude[place] * Math.exp(-rate * seconds),
    cooling.settled[place],
  );
}
