import type { LayerReading } from './layerReading.ts';

/** Where two layers meet. */
export interface SolvedJoint {
  /** Of the lower layer's surface just before the upper one landed [°C] */
  readonly surfaceBefore: number;
  /** As they touched: mean of the two, weighted by effusivity [°C] */
  readonly contactTemperature: number;
  /** Time above the bond temperature until the end of the time solved [s], later reheating by other layers included */
  readonly secondsAboveBond: number;
  readonly verdict: 'bonds' | 'peels';
}

/**
 * Time that a face spends above a temperature, on straight lines between readings.
 * @param readings - in order of time
 * @returns [s]
 */
export function secondsAbove(readings: readonly LayerReading[], temperature: number): number {
  return readings.reduce((sum, { time, surface }, index) => {
    const before = readings[index - 1];
    if (before === undefined) return sum;
    const [start, end] = [before.surface - temperature, surface - temperature];
    const width = time - before.time;
    if (start > 0 && end > 0) return sum + width;
    if (start <= 0 && end <= 0) return sum;
    return sum + (width * Math.max(start, end)) / Math.abs(start - end);
  }, 0);
}
