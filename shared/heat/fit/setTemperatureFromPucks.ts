import { requireNumber } from '../../errors/requireNumber.ts';
import { layerCooling, layerTemperature } from '../layerCooling.ts';
import type { LayerInMold } from '../layerInMold.ts';

/** A puck poured into a mold of known temperature and tilted now and then. */
export interface PuckTrial {
  readonly puck: LayerInMold;
  /** From the pour to the first tilt at which nothing moved [s], > `interval` */
  readonly seconds: number;
  /** Between tilts [s], > 0 */
  readonly interval: number;
}

export interface MeasuredFigure {
  readonly value: number;
  readonly standardError: number;
}

export interface SetTemperature extends MeasuredFigure {
  /** Mean of each puck's layer when it stopped moving [°C], in order */
  readonly each: readonly number[];
}

/**
 * Set temperature of a plastisol from puck trials: mean temperature of the layer when it stopped moving.
 *
 * It stopped between the last two tilts, so the middle is taken: T = T_mean(t - interval / 2). The error is the larger of
 * the scatter between pucks and what the tilts leave open, interval / sqrt(12) times the cooling rate, over sqrt(n).
 * What all pucks share (pour loss, thickness, diffusivity) is not in it; the figure serves the same layer model best.
 *
 * @param trials - at least one
 * @returns [°C]
 * @throws InputError on a figure out of range, or a puck that had set before its first tilt
 * @source CARSLAW, section 3.11, through `layerCooling`
 */
export function setTemperatureFromPucks(trials: readonly PuckTrial[]): SetTemperature {
  requireNumber(trials.length, 'puck trials', { atLeast: 1 });
  const pucks = trials.map(({ puck, seconds, interval }) => {
    requireNumber(interval, 'time between tilts', { unit: 's', greaterThan: 0 });
    requireNumber(seconds, 'time until a puck set', { unit: 's', greaterThan: interval });
    const cooling = layerCooling(puck);
    const at = (time: number) => layerTemperature(cooling, 'mean', time);
    const fall = at(seconds - interval) - at(seconds);
    return { temperature: at(seconds - interval / 2), open: fall / Math.sqrt(12) };
  });
  const count = pucks.length;
  const each = pucks.map(({ temperature }) => temperature);
  const value = each.reduce((sum, one) => sum + one, 0) / count;
  const squares = each.reduce((sum, one) => sum + (one - value) ** 2, 0);
  const scatter = count > 1 ? Math.sqrt(squares / (count - 1)) : 0;
  const open = Math.sqrt(pucks.reduce((sum, puck) => sum + puck.open ** 2, 0) / count);
  return { value, standardError: Math.max(scatter, open) / Math.sqrt(count), each };
}
